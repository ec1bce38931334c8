//! Forms: a shape at a size, made again and again, with the area of each zone.
