//! The best cut of a picture into two parts: how well each place fits to either, against how long the border between them is.

/// A square grid of places.
#[derive(Clone, Copy)]
pub(super) struct Grid {
    pub(super) width: usize,
    pub(super) height: usize,
}

impl Grid {
    /// The places beside one.
    pub(super) fn neighbours(self, at: usize) -> impl Iterator<Item = usize> {
        let Grid { width, height } = self;
        let (x, y) = (at % width, at / width);
        let left = (x > 0).then(|| at - 1);
        let right = (x + 1 < width).then_some(at + 1);
        let above = (y > 0).then(|| at - width);
        let below = (y + 1 < height).then_some(at + width);
        [left, right, above, below].into_iter().flatten()
    }

    /// What hangs together of the places that count.
    pub(super) fn components(self, counts: impl Fn(usize) -> bool) -> Components {
        let mut label = vec![NONE; self.width * self.height];
        let mut sizes = Vec::new();
        for start in 0..label.len() {
            let (mut size, mut waiting) = (0, vec![start]);
            while let Some(at) = waiting.pop() {
                if counts(at) && label[at] == NONE {
                    label[at] = sizes.len();
                    size += 1;
                    waiting.extend(self.neighbours(at));
                }
            }
            if size > 0 {
                sizes.push(size);
            }
        }
        Components { label, sizes }
    }
}

/// The label of a place that belongs to no component.
const NONE: usize = usize::MAX;

/// Parts of a grid that do not touch one another.
pub(super) struct Components {
    label: Vec<usize>,
    /// Places of each.
    pub(super) sizes: Vec<usize>,
}

impl Components {
    /// The one with the most places.
    pub(super) fn largest(&self) -> Option<usize> {
        (0..self.sizes.len()).max_by_key(|part| self.sizes[*part])
    }

    /// Whether a place belongs to this one.
    pub(super) fn has(&self, part: usize, at: usize) -> bool {
        self.label[at] == part
    }
}

/// The most rounds, after which a cut hardly changes; it is enough when in a round no place belongs so much more or less.
const ROUNDS: usize = 240;
const SETTLED: f32 = 0.0005;
/// Step sizes of the two halves of a round; their product is at most 1/8 on a square grid.
const STEP: f32 = 0.35;

/// How far each place belongs to the part: 0 to 1, nearly always one of these. `cost` is what belonging costs at each
/// place (less than 0: what it gains), `border` what a unit of border costs there.
///
/// Source: T. Chan, S. Esedoglu, M. Nikolova, Algorithms for Finding Global Minimizers of Image Segmentation and Denoising
/// Models, SIAM J. Appl. Math. 66 (2006): the least of this is a least cut; found by A. Chambolle, T. Pock, A First-Order
/// Primal-Dual Algorithm, J. Math. Imaging Vis. 40 (2011), algorithm 1.
pub(super) fn least_cut(grid: Grid, cost: &[f32], border: &[f32]) -> Vec<f32> {
    let Grid { width, height } = grid;
    let mut part: Vec<f32> = cost.iter().map(|cost| if *cost < 0.0 { 1.0 } else { 0.0 }).collect();
    let mut ahead = part.clone();
    // What flows to the right of each place and below it; over the grid's edge nothing does.
    let (mut across, mut down) = (vec![0.0f32; part.len()], vec![0.0f32; part.len()]);
    let nothing = vec![0.0f32; width];
    for _ in 0..ROUNDS {
        for y in 0..height {
            let row = y * width..(y + 1) * width;
            let here = &ahead[row.clone()];
            let below = if y + 1 < height { &ahead[row.end..row.end + width] } else { here };
            let (across, down, border) = (&mut across[row.clone()], &mut down[row.clone()], &border[row]);
            for x in 0..width {
                let right = if x + 1 < width { here[x + 1] } else { here[x] };
                let (to_right, to_below) =
                    (across[x] + STEP * (right - here[x]), down[x] + STEP * (below[x] - here[x]));
                let length = (to_right * to_right + to_below * to_below).sqrt();
                let kept = (border[x] / length).min(1.0);
                (across[x], down[x]) = (to_right * kept, to_below * kept);
            }
        }
        let mut most = 0.0f32;
        for y in 0..height {
            let row = y * width..(y + 1) * width;
            let above = if y > 0 { &down[row.start - width..row.start] } else { &nothing[..] };
            let (across, down, cost) = (&across[row.clone()], &down[row.clone()], &cost[row.clone()]);
            let (part, ahead) = (&mut part[row.clone()], &mut ahead[row]);
            for x in 0..width {
                let before = if x > 0 { across[x - 1] } else { 0.0 };
                let spread = across[x] - before + down[x] - above[x];
                let now = (part[x] + STEP * (spread - cost[x])).clamp(0.0, 1.0);
                most = most.max((now - part[x]).abs());
                ahead[x] = 2.0 * now - part[x];
                part[x] = now;
            }
        }
        if most < SETTLED {
            break;
        }
    }
    part
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_gap_in_what_is_known_is_bridged_and_a_lone_place_is_not_taken() {
        let grid = Grid { width: 40, height: 30 };
        let is_block = |x: usize, y: usize| (10..30).contains(&x) && (8..22).contains(&y);
        let cost: Vec<f32> = (0..30)
            .flat_map(|y| (0..40).map(move |x| (x, y)))
            .map(|(x, y)| match (x, y) {
                // Nothing is known within the block's middle.
                (16..24, 12..18) => 0.0,
                (3, 3) => -1.0,
                _ if is_block(x, y) => -1.0,
                _ => 1.0,
            })
            .collect();
        let part = least_cut(grid, &cost, &vec![1.0; 1200]);
        for y in 0..30 {
            for x in 0..40 {
                let is_corner = (x == 10 || x == 29) && (y == 8 || y == 21);
                assert!(is_corner || (part[y * 40 + x] > 0.5) == is_block(x, y), "{x} {y}: {}", part[y * 40 + x]);
            }
        }
    }
}
