//! Every target for some seconds, the same way each time: what once found something, the seeds, and a row of changed ones.

use laydown_fuzz::{Swarm, Target};

fn runs(name: &str, inputs: usize) {
    let target = Target::named(name);
    let corpus = target.corpus();
    for (file, input) in &corpus {
        // Which file it is is told when it fails.
        eprintln!("{file}");
        target.run(input);
    }
    let seeds: Vec<Vec<u8>> = (target.seeds)().into_iter().chain(corpus.into_iter().map(|(_, input)| input)).collect();
    let most = seeds.iter().map(|seed| target.run(seed)).max().unwrap();
    let most = Swarm::of(seeds, 20_261_126).take(inputs).map(|input| target.run(&input)).fold(most, usize::max);
    eprintln!("{name}: {inputs} inputs, at most {:.1} MB held", most as f64 / 1e6);
}

macro_rules! targets {
    ($($name:ident: $inputs:literal,)+) => {
        $(#[test]
        fn $name() {
            runs(stringify!($name), $inputs);
        })+

        #[test]
        fn none_is_left_out() {
            let names = [$(stringify!($name)),+];
            assert_eq!(laydown_fuzz::TARGETS.map(|target| target.name), names);
        }
    };
}

targets! {
    segment: 2000,
    lines: 2000,
    spreadsheet: 200,
    backup: 300,
    archive: 60,
    photo: 600,
    metadata: 300,
    numbers: 30000,
    body: 3000,
    events: 60,
    pages: 100,
}
