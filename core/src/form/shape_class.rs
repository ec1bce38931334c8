//! Classes of shape, each with a profile of its usual proportions.

use super::profile::Profile;
use crate::coded::coded;

coded! {
    /// A class of shape that scales as one.
    "shape" ShapeClass {
        /// Straight walls.
        CylinderMug = "cylinder_mug" "straight mug",
        /// A belly.
        RoundedMug = "rounded_mug" "rounded mug",
        /// Wider than twice its depth.
        OpenBowl = "open_bowl" "open bowl",
        /// About as deep as half its width.
        DeepBowl = "deep_bowl" "deep bowl",
        /// Flat with a rim.
        Plate = "plate" "plate",
        /// Closed, with a neck.
        Bottle = "bottle" "bottle",
        /// Closed a little, with a wide mouth.
        Jar = "jar" "jar",
        /// One flat face.
        Tile = "tile" "tile",
    }
}

impl ShapeClass {
    /// Usual proportions of the class, in millimetres at a usual size; a tile has none. Common practice, no source.
    pub fn profile(self) -> Option<Profile> {
        let (inside, wall, bare_foot): (&[(f64, f64)], f64, f64) = match self {
            Self::CylinderMug => (&[(0.0, 0.0), (0.0, 31.0), (2.0, 34.5), (6.0, 36.0), (88.0, 36.0)], 4.0, 8.0),
            Self::RoundedMug => (
                &[
                    (0.0, 0.0),
                    (0.0, 24.0),
                    (4.0, 32.0),
                    (14.0, 39.0),
                    (28.0, 43.0),
                    (42.0, 44.0),
                    (56.0, 42.0),
                    (70.0, 38.5),
                    (80.0, 37.0),
                    (86.0, 37.5),
                ],
                4.0,
                8.0,
            ),
            Self::OpenBowl => (
                &[
                    (0.0, 0.0),
                    (0.5, 20.0),
                    (4.0, 38.0),
                    (12.0, 56.0),
                    (24.0, 70.0),
                    (38.0, 80.0),
                    (52.0, 87.0),
                    (60.0, 90.0),
                ],
                5.0,
                8.0,
            ),
            Self::DeepBowl => (
                &[
                    (0.0, 0.0),
                    (1.0, 20.0),
                    (6.0, 36.0),
                    (16.0, 49.0),
                    (30.0, 58.0),
                    (48.0, 64.0),
                    (66.0, 68.0),
                    (80.0, 70.0),
                ],
                5.0,
                10.0,
            ),
            Self::Plate => {
                (&[(0.0, 0.0), (0.0, 75.0), (3.0, 86.0), (9.0, 93.0), (12.0, 104.0), (17.0, 125.0)], 6.0, 6.0)
            }
            Self::Bottle => (
                &[
                    (0.0, 0.0),
                    (0.0, 30.0),
                    (4.0, 37.0),
                    (20.0, 43.0),
                    (60.0, 45.0),
                    (100.0, 42.0),
                    (125.0, 33.0),
                    (140.0, 20.0),
                    (150.0, 13.0),
                    (165.0, 11.0),
                    (185.0, 11.0),
                    (195.0, 13.0),
                ],
                5.0,
                9.0,
            ),
            Self::Jar => (
                &[
                    (0.0, 0.0),
                    (0.0, 40.0),
                    (4.0, 48.0),
                    (20.0, 55.0),
                    (60.0, 58.0),
                    (95.0, 54.0),
                    (110.0, 47.0),
                    (115.0, 45.0),
                    (122.0, 45.0),
                ],
                5.0,
                9.0,
            ),
            Self::Tile => return None,
        };
        Some(Profile::new(inside, wall, bare_foot))
    }

    /// Half of the silhouette as (radius, height) from the foot's centre to the rim, scaled so that the larger of its
    /// whole width and its height is 1.
    pub fn outline(self) -> Vec<(f64, f64)> {
        let Some(profile) = self.profile() else {
            // A slab seen from its edge.
            return vec![(0.0, 0.0), (0.5, 0.0), (0.5, 0.08), (0.0, 0.08)];
        };
        let outside = profile.outside();
        let ground = outside.iter().fold(f64::INFINITY, |lowest, point| lowest.min(point.height));
        let height = outside.iter().fold(0.0f64, |highest, point| highest.max(point.height - ground));
        let width = outside.iter().fold(0.0f64, |widest, point| widest.max(2.0 * point.radius));
        let size = height.max(width);
        outside.iter().map(|point| (point.radius / size, (point.height - ground) / size)).collect()
    }
}
