//! Boards that hang, that are pushed along, with bars, and with thin sides.

use super::*;

/// A clamped square plate whose edges cannot move, under the same pressure everywhere: rise over thickness for `q a⁴/E t⁴`.
/// S. Levy, NACA Technical Note 847, 1942, for a Poisson's number of 0.316 (from memory); later finite elements come out up
/// to 2.5 % below its six terms, as the shapes here do.
#[test]
fn a_clamped_plate_that_hangs_rises_as_the_table_says() {
    let table = [
        (17.79, 0.237),
        (38.3, 0.471),
        (63.4, 0.695),
        (95.0, 0.912),
        (134.9, 1.121),
        (184.0, 1.323),
        (245.0, 1.521),
        (318.0, 1.714),
        (402.0, 1.902),
    ];
    let sheet = Sheet { poisson: 0.316, shear: Stress::from_gpa(200.0 / 2.632), ..STEEL };
    let plate = even(300.0, 300.0, sheet);
    let stiffness = plate.stiffness().unwrap();
    let unit = 200e9 * 0.004_f64.powi(4) / 0.3_f64.powi(4);
    let mut hanging =
        stiffness.hanging_by(pressure(&stiffness, unit), Support::FIRM, None).unwrap();
    for (load, rise) in table {
        let state = hanging.under(load, 1.0, &[Length::from_mm(150.0)]).unwrap().0[0];
        let ours = state.rise.to_mm() / 4.0;
        assert!((ours - rise).abs() < 0.03 * rise, "{load}: {ours} for {rise}");
    }
}

/// Under a push along it a hinged board bows at `π²/b² [D_y (m b/l)² + 2 H + D_x (l/m b)²]` for the `m` that gives least:
/// S. Timoshenko and J. M. Gere, *Theory of Elastic Stability*, chapter 9 (from memory). One that is clamped at its sides is
/// held between; a push that is stretched nowhere bows nothing.
#[test]
fn a_board_that_is_pushed_along_bows_as_the_closed_form_says() {
    for (sheet, length_mm) in [(STEEL, 300.0), (STEEL, 900.0), (SPRUCE, 1200.0), (SPRUCE, 500.0)] {
        let plate = even(300.0, length_mm, sheet);
        let stiff = sheet.rigidity(0.004);
        let both = 2.0 * (stiff.both + 2.0 * stiff.twist);
        let waves = (1..20).map(|waves| {
            let ratio = (f64::from(waves) * 300.0 / length_mm).powi(2);
            stiff.along * ratio + both + stiff.across / ratio
        });
        let wanted = PI * PI / 0.09 * waves.fold(f64::INFINITY, f64::min);
        let strain = wanted / (sheet.along.to_pa() * 0.004);
        let stiffness = plate.stiffness().unwrap();
        let pushes = [(0.0, 0.5 * strain), (1.0, 0.5 * strain)];
        let times = stiffness.bows_at(Edges::HINGED, &Push(&pushes)).unwrap();
        assert!(times <= 2.0005 && times > 1.975, "{length_mm}: {times}");
        let sides = Edges { sides_n: (f64::INFINITY, f64::INFINITY), ends_n: 0.0 };
        let clamped = stiffness.bows_at(sides, &Push(&pushes)).unwrap();
        assert!(clamped > 1.3 * times, "{length_mm}: {clamped}");
        // Under a push of half of what bows it, a board rises about twice as far where it has that shape.
        let taken = stiffness.pushed(&Push(&pushes));
        let mut pushed =
            stiffness.hanging_by(pressure(&stiffness, 1e-6), Support::LOOSE, Some(&taken)).unwrap();
        let mut alone =
            stiffness.hanging_by(pressure(&stiffness, 1e-6), Support::LOOSE, None).unwrap();
        let middle = [Length::from_mm(0.5 * length_mm)];
        let of =
            |hanging: &mut Hanging<'_>| hanging.under(1.0, 1.0, &middle).unwrap().0[0].rise.to_m();
        let ratio = of(&mut pushed) / of(&mut alone);
        assert!(ratio > 1.0 && ratio < 2.05, "{length_mm}: {ratio}");
        assert!(length_mm > 300.0 || ratio > 1.9, "{ratio}");
    }
    let plate = even(300.0, 900.0, SPRUCE);
    let stretched = [(0.0, -1e-3), (1.0, -1e-3)];
    let stiffness = plate.stiffness().unwrap();
    assert_eq!(stiffness.bows_at(Edges::HINGED, &Push(&stretched)), Some(MOST_PUSHED));
    assert!(!Push(&stretched).pushes());
}

/// Bars side by side are a board that is stiffer one way: `EI` over their distance is added to what it holds.
#[test]
fn many_bars_are_a_stiffer_board() {
    let size = (Length::from_mm(4.0), Length::from_mm(6.0));
    let bars = Bars { modulus: Stress::from_gpa(12.0), ..Bars::default() };
    // Along: twelve in each half at a thirteenth, and so one for each 11.5 mm of it.
    let pairs = Bars { pairs: 12, pair_shares: (1.0 / 13.0, 12.0 / 13.0), pair_size: size, ..bars };
    let plain = even(300.0, 1200.0, SPRUCE);
    let barred = Plate { bars: pairs, ..plain };
    let stiff = plain.sheet.rigidity(0.004);
    let more = barred.pair_section((0.0, 0.0)).rigidity_n_m2 / (0.15 / 13.0);
    let along = SPRUCE.along.to_pa() * (stiff.along + more) / stiff.along;
    // The number that is kept is how the one way follows the other.
    let poisson = SPRUCE.poisson * SPRUCE.along.to_pa() / along;
    let locked = (1.0 - poisson * poisson * along / SPRUCE.across.to_pa())
        / (1.0 - SPRUCE.poisson.powi(2) * 0.078);
    let sheet = Sheet {
        across: Stress::from_pa(SPRUCE.across.to_pa() * locked),
        along: Stress::from_pa(along * locked),
        poisson,
        ..SPRUCE
    };
    let smeared = Plate { sheet, ..plain };
    for edges in [Edges::HINGED, Edges::CLAMPED] {
        let lift = Lift {
            at: Length::from_mm(600.0),
            over: Length::from_mm(400.0),
            force: Force::from_n(400.0),
        };
        let [one, other] = [barred, smeared].map(|plate| middle(&plate, &[lift], edges));
        assert_close(one.rise.to_m(), other.rise.to_m(), 0.01, "rise along");
    }
    // Across: forty at 30 mm.
    let cross_at = (Length::from_mm(15.0), Length::from_mm(30.0));
    let crossed = Bars { cross: 40, cross_at, cross_size: size, ..bars };
    let plate = Plate { bars: crossed, ..plain };
    let section = bars.rib(size).section(Length::from_mm(4.0), SPRUCE.across);
    let more = section.rigidity_n_m2 / 0.03 / stiff.across;
    let one_way = SPRUCE.poisson.powi(2) * 0.078;
    let locked = (1.0 - one_way / (1.0 + more)) / (1.0 - one_way);
    let sheet = Sheet {
        across: Stress::from_pa(SPRUCE.across.to_pa() * (1.0 + more) * locked),
        along: Stress::from_pa(SPRUCE.along.to_pa() * locked),
        ..SPRUCE
    };
    let smeared = Plate { sheet, ..plain };
    let lifts = along_all(1000.0, &plain);
    let [one, other] = [plate, smeared].map(|plate| middle(&plate, &lifts, Edges::HINGED));
    assert_close(one.rise.to_m(), other.rise.to_m(), 0.01, "rise across");
    let stiffness = plate.stiffness().unwrap();
    let mut hanging = stiffness.hanging(&lifts, Support::LOOSE, None).unwrap();
    let (_, crosses) = hanging.under(1e-3, 1.0, &[]).unwrap();
    assert_eq!(crosses.len(), 40);
    // The bar takes its share of the moment across; its middle is a little beside the last place that is looked at.
    let share = section.rigidity_n_m2 / (stiff.across * (1.0 + more));
    let stress =
        12e9 * section.outermost.to_m() * share * other.middle_n_m_per_m / section.rigidity_n_m2;
    assert_close(1e3 * crosses[20].stress.to_pa(), stress, 0.08, "stress");
    // At the middle half of the load goes to either side.
    let glue = 500.0 * share * section.glue_per_m2;
    assert_close(1e3 * crosses[20].glue.to_pa(), glue, 0.08, "glue");
}

/// A board that is thinner at its sides bends there as much as by its thickness there.
#[test]
fn a_board_of_strips_thinner_at_its_sides_is_a_tapered_beam() {
    let plate = Plate { side_ratio: 0.5, ..even(300.0, 1200.0, STRIPS) };
    let state = middle(&plate, &along_all(1000.0, &plate), Edges::HINGED);
    // Unit load: 2 ∫ (q/2)(s)²/2 /D(s) over half of the span from the side, summed up here.
    let (parts, half) = (4000, 0.15);
    let rise: f64 = (0..parts)
        .map(|of| {
            let s = half * (f64::from(of) + 0.5) / f64::from(parts);
            let thickness = 0.004 * (0.5 + 0.5 * s / half);
            let d = STRIPS.rigidity(thickness).across;
            2.0 * 500.0 * s * 0.5 * s / d * half / f64::from(parts)
        })
        .sum();
    assert_close(state.rise.to_m(), rise, 2e-3, "rise");
    assert_close(plate.thickness_of((1.0, 0.3)), 0.002, 1e-12, "side");
}

fn map(rows: &[(f64, [f64; 3])]) -> Option<Thick> {
    let rows: Vec<_> = rows.iter().map(|(at, row)| (*at, row.map(Length::from_mm))).collect();
    Thick::new(&rows)
}

/// A map that says what even tapers say changes no figure.
#[test]
fn a_map_of_an_even_board_is_that_board() {
    let tapered = Plate {
        thickness: (Length::from_mm(8.0), Length::from_mm(4.0)),
        side_ratio: 0.5,
        ..even(300.0, 1200.0, SPRUCE)
    };
    let thick = map(&[(0.0, [8.0, 6.0, 4.0]), (1.0, [4.0, 3.0, 2.0])]);
    assert!(thick.is_some());
    // Its other thicknesses do not count.
    let mapped = Plate {
        thick,
        side_ratio: 1.0,
        thickness: (Length::from_mm(1.0), Length::from_mm(9.0)),
        ..tapered
    };
    for edges in [Edges::HINGED, Edges::CLAMPED] {
        let [one, other] = [tapered, mapped].map(|of| middle(&of, &along_all(500.0, &of), edges));
        assert_close(other.rise.to_m(), one.rise.to_m(), 1e-9, "rise");
        assert_close(other.middle_n_m_per_m, one.middle_n_m_per_m, 1e-9, "middle");
        assert_close(other.edge_n_m_per_m, one.edge_n_m_per_m, 1e-9, "edge");
        assert!(one.within.is_none() && other.within.is_some());
    }
}

/// A strip on hinges that is thin halfway to its sides: its rise by a unit load, and its stress by its moment `q s/2` at
/// `s` from the side, both summed up here. The greatest is halfway, where neither middle nor edge is.
#[test]
fn a_board_of_strips_thin_halfway_is_a_beam_of_that_thickness() {
    let thick = map(&[(0.5, [6.0, 2.0, 6.0])]);
    let plate = Plate { thick, ..even(300.0, 1200.0, STRIPS) };
    let state = middle(&plate, &along_all(1000.0, &plate), Edges::HINGED);
    let (parts, half) = (4000, 0.15);
    let thickness = |s: f64| 0.002 + 0.004 * (2.0 * s / half - 1.0).abs();
    let steps = (0..parts).map(|of| half * (f64::from(of) + 0.5) / f64::from(parts));
    let rise: f64 = (steps.clone())
        .map(|s| 500.0 * s * s / STRIPS.rigidity(thickness(s)).across * half / f64::from(parts))
        .sum();
    // Cubics between a kink of the thickness come near to it.
    assert_close(state.rise.to_m(), rise, 0.03, "rise");
    let stress = steps.map(|s| 6.0 * 500.0 * s / thickness(s).powi(2)).fold(0.0, f64::max);
    let within = state.within.expect("a map");
    let beside = 6.0 * state.middle_n_m_per_m / 0.006_f64.powi(2);
    assert!(within.stress().to_pa() > 3.0 * beside, "{within:?} {beside}");
    let ratio = within.stress().to_pa() / stress;
    assert!((1.0..1.08).contains(&ratio), "{ratio}: on the safe side");
}
