//! Frames whose answers stand in textbooks, worked out by hand from their closed forms.

use super::*;
use crate::engine::units::Length;
use crate::testing::assert_close;

const UP: Vector = [0.0, 0.0, 1.0];
const NO_ARM: Vector = [0.0; 3];

/// Round numbers: `E I` 1000 and 400, `G J` 300, `E A` 1e6; so stiff in shear that it does not count.
fn plain() -> Stiffness {
    Stiffness { axial: 1e6, torsion: 300.0, bending: [1000.0, 400.0], shear: [1e15, 1e15] }
}

/// Bars from node to node along a line of places, of equal pieces between them.
struct Line {
    places: Vec<Vector>,
    bars: Vec<Piece>,
    loads: Vec<f64>,
}

impl Line {
    fn new(corners: &[Vector], pieces: usize, breadth: Vector, stiff: Stiffness) -> Self {
        let mut places = vec![corners[0]];
        for pair in corners.windows(2) {
            let step = way(pair[0], pair[1]);
            for piece in 1..=pieces {
                let share = piece as f64 / pieces as f64;
                places.push([0, 1, 2].map(|i| pair[0][i] + share * step[i]));
            }
        }
        let bars = (1..places.len())
            .map(|to| {
                let ends = [places[to - 1], places[to]];
                Piece::bar([to - 1, to], ends, [NO_ARM; 2], breadth, stiff).unwrap()
            })
            .collect();
        let loads = vec![0.0; OF_NODE * places.len()];
        Self { places, bars, loads }
    }

    fn load(mut self, node: usize, number: usize, force: f64) -> Self {
        self.loads[OF_NODE * node + number] += force;
        self
    }

    fn frame(&self) -> Frame {
        let mut frame = Frame::new(self.places.len(), 1);
        self.bars.iter().for_each(|bar| frame.add(bar));
        frame
    }

    fn moved(&self, fast: Vec<usize>) -> Vec<f64> {
        let mut moved = self.loads.clone();
        self.frame().hold(fast).unwrap().solve(&mut moved);
        moved
    }
}

fn level(length: f64, pieces: usize, stiff: Stiffness) -> Line {
    Line::new(&[[0.0; 3], [length, 0.0, 0.0]], pieces, UP, stiff)
}

fn ends(line: &Line) -> Vec<usize> {
    all_of(0).chain(all_of(line.places.len() - 1)).collect()
}

/// `δ = P L³/3 E I + P L/G A_s`, `θ = P L²/2 E I`, along `F L/E A`, twist `T L/G J`. Source: any book on the strength of
/// materials; S. Timoshenko for the shear.
#[test]
fn a_cantilever_gives_as_in_the_books() {
    let soft = Stiffness { shear: [5000.0, 2000.0], ..plain() };
    let line = level(2.0, 3, soft).load(3, 0, 7.0).load(3, 1, -6.0);
    let line = line.load(3, 2, 5.0).load(3, 3, 4.0);
    let moved = line.moved(all_of(0).collect());
    let end = &moved[18..];
    assert_close(end[0], 7.0 * 2.0 / 1e6, 1e-9, "along");
    assert_close(end[1], -6.0 * (8.0 / 3000.0 + 2.0 / 5000.0), 1e-9, "down");
    assert_close(end[2], 5.0 * (8.0 / 1200.0 + 2.0 / 2000.0), 1e-9, "aside");
    assert_close(end[3], 4.0 * 2.0 / 300.0, 1e-9, "twist");
    assert_close(end[4], -5.0 * 4.0 / 800.0, 1e-9, "turn about y");
    assert_close(end[5], -6.0 * 4.0 / 2000.0, 1e-9, "turn about z");
    // What the far part gives: the force itself, and at the wall its moment: `r × F`.
    let wall = line.bars[0].cuts(&moved)[0];
    for (at, wanted) in [7.0, -6.0, 5.0, 4.0, -10.0, -12.0].into_iter().enumerate() {
        assert_close(wall[at], wanted, 1e-9, at);
    }
    let tip = line.bars[2].cuts(&moved)[1];
    assert!(tip[4].abs() < 1e-8 && tip[5].abs() < 1e-8, "{tip:?}");
}

/// Fixed at one end, propped at the other, a force in the middle: the prop takes `5 P/16`, the wall `3 P L/16`.
/// Source: J. M. Gere, *Mechanics of Materials*, the propped cantilever (from memory), worked out again.
#[test]
fn a_propped_beam_gives_its_prop_five_sixteenths() {
    let line = level(2.0, 2, plain()).load(1, 1, -16.0);
    let moved = line.moved(all_of(0).chain([6 * 2 + 1]).collect());
    let last = line.bars[1].cuts(&moved);
    assert_close(last[1][1], 5.0, 1e-9, "prop");
    assert_close(line.bars[0].cuts(&moved)[0][5], -3.0 * 16.0 * 2.0 / 16.0, 1e-9, "wall");
    assert_close(last[0][5], 5.0, 1e-9, "middle: 5 P L/32");
}

/// Clamped at both ends, a force in the middle: `P L/8` at wall and middle, `P L³/192 E I`. Source: as above.
#[test]
fn a_clamped_beam_gives_an_eighth() {
    let line = level(2.0, 2, plain()).load(1, 1, -16.0).load(1, 3, 8.0);
    let moved = line.moved(ends(&line));
    assert_close(moved[7], -16.0 * 8.0 / 192_000.0, 1e-9, "down");
    assert_close(moved[9], 8.0 / (2.0 * 300.0), 1e-9, "twist: both halves hold");
    assert_close(line.bars[0].cuts(&moved)[1][5], 4.0, 1e-9, "middle");
    assert_close(line.bars[1].cuts(&moved)[1][5], -4.0, 1e-9, "wall");
}

/// A portal of posts 3 and a beam 2 long, of one `E I`, clamped below, pushed aside at the top by 10: with `k = h/L` of
/// the stiffnesses the posts bear `H h/2 · (3k + 1)/(6k + 1)` below and `H h/2 · 3k/(6k + 1)` above. Source: A. Kleinlogel,
/// *Rahmenformeln* (from memory), worked out again by slopes and deflections, which leaves out that bars grow longer.
#[test]
fn a_portal_frame_bears_what_the_frame_formulas_say() {
    let corners = [[0.0; 3], [0.0, 3.0, 0.0], [2.0, 3.0, 0.0], [2.0, 0.0, 0.0]];
    let stiff = Stiffness { axial: 1e12, ..plain() };
    let line = Line::new(&corners, 1, UP, stiff).load(1, 0, 10.0);
    let moved = line.moved(ends(&line));
    let k = 3.0 / 2.0;
    let (foot, head) = (15.0 * (3.0 * k + 1.0) / (6.0 * k + 1.0), 15.0 * 3.0 * k / (6.0 * k + 1.0));
    let cuts: Vec<[Cut; 2]> = line.bars.iter().map(|bar| bar.cuts(&moved)).collect();
    assert_close(cuts[0][0][5].abs(), foot, 1e-6, "foot");
    assert_close(cuts[0][1][5].abs(), head, 1e-6, "head");
    assert_close(cuts[2][1][5].abs(), foot, 1e-6, "other foot");
    assert_close(cuts[2][0][1].abs(), 5.0, 1e-6, "each post bears half of the push");
}

/// A cranked beam: an arm `a` square to a beam of length `L` that is clamped, a force down at its end:
/// `P (L³ + a³)/3 E I + P a² L/G J`. Source: R. J. Roark and any book on the strength of materials, worked out.
#[test]
fn a_cranked_beam_bends_and_twists() {
    let corners = [[0.0; 3], [2.0, 0.0, 0.0], [2.0, 1.0, 0.0]];
    let same = Stiffness { bending: [1000.0, 1000.0], ..plain() };
    let line = Line::new(&corners, 2, UP, same).load(4, 2, -9.0);
    let moved = line.moved(all_of(0).collect());
    let wanted = -9.0 * ((8.0 + 1.0) / 3000.0 + 2.0 / 300.0);
    assert_close(moved[6 * 4 + 2], wanted, 1e-9, "down");
    let wall = line.bars[0].cuts(&moved)[0];
    assert_close(wall[3], -9.0, 1e-9, "torque: force times arm");
    assert_close(wall[4], 18.0, 1e-9, "bending: force times length");
    // The same force on an arm that does not give: no bending of the arm.
    let line = level(2.0, 2, same);
    let mut moved = line.loads.clone();
    let force = at_arm([0.0, 0.0, -9.0], [0.0, 1.0, 0.0]);
    moved[12..18].copy_from_slice(&force);
    line.frame().hold(all_of(0).collect()).unwrap().solve(&mut moved);
    let end = moved[6 * 2 + 2] + 1.0 * moved[6 * 2 + 3];
    assert_close(end, -9.0 * (8.0 / 3000.0 + 2.0 / 300.0), 1e-9, "at the arm's end");
}

/// A beam clamped at one end and on a spring at the other takes `P/(1 + 3 E I/k L³)` off the spring; its joints between
/// pinned and stiff: with a turning spring at the foot `P L²/κ` is added to the deflection over `L`. Source: the
/// force method of any book on structures, worked out.
#[test]
fn springs_give_between_pinned_and_stiff() {
    let axes = [[1.0, 0.0, 0.0], [0.0, 1.0, 0.0], UP];
    for spring in [0.0, 50.0, 375.0, 1e9] {
        let line = level(2.0, 2, plain()).load(2, 1, -6.0);
        let mut frame = Frame::new(4, 1);
        line.bars.iter().for_each(|bar| frame.add(bar));
        let only_down = [0.0, spring, 0.0, 0.0, 0.0, 0.0];
        let joint = Piece::joint([2, 3], [NO_ARM; 2], axes, only_down);
        frame.add(&joint);
        let mut moved = line.loads.clone();
        moved.resize(24, 0.0);
        frame.hold(all_of(0).chain(all_of(3)).collect()).unwrap().solve(&mut moved);
        let wanted = -6.0 / (3000.0 / 8.0 + spring);
        assert_close(moved[13], wanted, 1e-8, spring);
        assert!((joint.cuts(&moved)[0][1] + spring * wanted).abs() < 1e-6);
    }
    for turning in [40.0, 1e4, 1e9] {
        // The wall is node 0, a joint leads to the bar from node 1 to node 2.
        let far = [2.0, 0.0, 0.0];
        let bar = Piece::bar([1, 2], [[0.0; 3], far], [NO_ARM; 2], UP, plain()).unwrap();
        let stiff = [1e9, 1e9, 1e9, 1e9, 1e9, turning];
        let joint = Piece::joint([0, 1], [NO_ARM; 2], axes, stiff);
        let mut frame = Frame::new(3, 1);
        frame.add(&bar);
        frame.add(&joint);
        let mut moved = vec![0.0; frame.numbers()];
        moved[13] = -6.0;
        frame.hold(all_of(0).collect()).unwrap().solve(&mut moved);
        let wanted = -6.0 * (8.0 / 3000.0 + 4.0 / turning);
        assert_close(moved[13], wanted, 1e-5, turning);
        assert_close(joint.cuts(&moved)[1][5], -12.0, 1e-5, "moment through the joint");
    }
}

/// Arms that do not give are as bars that hardly give: a beam that hangs off its nodes.
#[test]
fn arms_carry_forces_and_moments_to_the_nodes() {
    let arm = [0.0, 0.3, 0.1];
    let far = [2.0, 0.0, 0.0];
    let beside = Piece::bar([0, 1], [[0.0; 3], far], [arm; 2], UP, plain()).unwrap();
    let mut frame = Frame::new(2, 1);
    frame.add(&beside);
    let mut moved = vec![0.0; 12];
    moved[6] = 5.0;
    frame.hold(all_of(0).collect()).unwrap().solve(&mut moved);
    // The pull at the node bends the bar, which lies beside it, by `−arm × pull`.
    let cut = beside.cuts(&moved)[0];
    for (at, wanted) in [5.0, 0.0, 0.0, 0.0, -0.5, 1.5].into_iter().enumerate() {
        assert!((cut[at] - wanted).abs() < 1e-9, "{at}: {}", cut[at]);
    }
    let along = 5.0 * 2.0 / 1e6 + 0.3 * 1.5 * 2.0 / 1000.0 + 0.1 * 0.5 * 2.0 / 400.0;
    assert_close(moved[6], along, 1e-9, "at the node");
}

/// What node `i` moves under a force at `j` is what `j` moves under one at `i`. Source: J. C. Maxwell and E. Betti.
#[test]
fn two_forces_move_each_other_alike() {
    let corners = [[0.0; 3], [0.3, 0.9, 0.2], [1.1, 1.2, 0.1], [1.6, -0.2, 0.0]];
    let stiff = Stiffness { shear: [4e4, 4e4], ..plain() };
    let moved = |node: usize, number: usize| {
        let line = Line::new(&corners, 3, [0.1, 0.2, 1.0], stiff).load(node, number, 1.0);
        line.moved(ends(&line))
    };
    for (one, other) in [((2, 0), (7, 4)), ((3, 2), (5, 1)), ((8, 5), (1, 3))] {
        let at = |(node, number): (usize, usize)| OF_NODE * node + number;
        let (here, there) = (moved(one.0, one.1)[at(other)], moved(other.0, other.1)[at(one)]);
        assert_close(here, there, 1e-8, "Maxwell");
    }
}

/// More pieces change nothing, and all that holds the frame is what loads it.
#[test]
fn pieces_can_be_halved_and_forces_balance() {
    let corners = [[0.0; 3], [0.4, 0.8, 0.0], [1.3, 1.0, 0.3]];
    let of = |pieces: usize| {
        let line = Line::new(&corners, pieces, UP, plain());
        let line = line.load(pieces, 1, -30.0).load(pieces, 4, 2.0);
        let moved = line.moved(ends(&line));
        let last = line.bars.len() - 1;
        (line.bars[0].cuts(&moved)[0], line.bars[last].cuts(&moved)[1], line)
    };
    let (first, last, line) = of(1);
    let (again, more, _) = of(4);
    for at in 0..6 {
        assert!((first[at] - again[at]).abs() < 1e-8, "{at}");
        assert!((last[at] - more[at]).abs() < 1e-8, "{at}");
    }
    let whole = |axes: [Vector; 3], cut: Cut| -> [Vector; 2] {
        let sum = |from: usize| {
            [0, 1, 2].map(|i| (0..3).map(|axis| cut[from + axis] * axes[axis][i]).sum::<f64>())
        };
        [sum(0), sum(3)]
    };
    let near = whole(line.bars[0].axes(), first);
    let far = whole(line.bars[1].axes(), last);
    // What lies beyond the first cut: the load and what the far wall gives.
    let load = [0.0, -30.0, 0.0];
    let (at_load, at_far) = (cross(corners[1], load), cross(corners[2], far[0]));
    for i in 0..3 {
        assert!((near[0][i] - load[i] - far[0][i]).abs() < 1e-8, "force {i}");
        let given = [0.0, 2.0, 0.0][i] + at_load[i] + at_far[i] + far[1][i];
        assert!((near[1][i] - given).abs() < 1e-8, "moment {i}");
    }
}

#[test]
fn a_rectangle_is_as_stiff_as_its_numbers_say() {
    let section = Rectangle::new(Length::from_mm(40.0), Length::from_mm(60.0)).unwrap();
    let stiff = Stiffness::of(section, Stress::from_gpa(10.0), Stress::from_gpa(0.6));
    assert_close(stiff.axial, 24e6, 1e-12, "E A");
    assert_close(stiff.bending[0], 7200.0, 1e-12, "E I");
    assert_close(stiff.bending[1], 3200.0, 1e-12, "E I sideways");
    assert_close(stiff.torsion, 0.6e9 * section.torsion_m4(), 1e-12, "G J");
    assert_close(stiff.shear[1], 1.2e6, 1e-12, "G A");
}

#[test]
fn what_cannot_stand_is_none() {
    let bar =
        |to: Vector, breadth| Piece::bar([0, 1], [[0.0; 3], to], [NO_ARM; 2], breadth, plain());
    assert!(bar([0.0; 3], UP).is_none());
    assert!(bar([0.0, 0.0, 2.0], UP).is_none());
    assert!(bar([f64::NAN, 0.0, 0.0], UP).is_none());
    let line = level(1.0, 2, plain());
    assert!(line.frame().hold((0..3).collect()).is_none());
}
