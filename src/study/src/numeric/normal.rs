//! The normal distribution.

/// The standard normal density at `z`.
pub fn density(z: f64) -> f64 {
    (-0.5 * z * z).exp() / (2.0 * std::f64::consts::PI).sqrt()
}

/// The two-sided percentage point: how many standard deviations to either side
/// hold `level` (between 0 and 1) of a normal distribution.
pub fn half_width(level: f64) -> f64 {
    quantile(0.5 + 0.5 * level)
}

/// The value that a standard normal variable stays below with probability `p`,
/// strictly between 0 and 1: algorithm AS 241 (Wichura 1988), good to sixteen figures.
pub fn quantile(p: f64) -> f64 {
    let q = p - 0.5;
    if q.abs() <= 0.425 {
        let r = 0.180_625 - q * q;
        return q * poly(&MIDDLE_ABOVE, r) / poly(&MIDDLE_BELOW, r);
    }
    let r = (-p.min(1.0 - p).ln()).sqrt();
    let x = if r <= 5.0 {
        poly(&SIDE_ABOVE, r - 1.6) / poly(&SIDE_BELOW, r - 1.6)
    } else {
        poly(&TAIL_ABOVE, r - 5.0) / poly(&TAIL_BELOW, r - 5.0)
    };
    x.copysign(q)
}

/// A polynomial, the constant first.
fn poly(from_constant: &[f64], x: f64) -> f64 {
    from_constant.iter().rev().fold(0.0, |sum, c| sum * x + c)
}

const MIDDLE_ABOVE: [f64; 8] = [
    3.387_132_872_796_366_5,
    133.141_667_891_784_38,
    1_971.590_950_306_551_3,
    13_731.693_765_509_46,
    45_921.953_931_549_87,
    67_265.770_927_008_7,
    33_430.575_583_588_13,
    2_509.080_928_730_122_7,
];
const MIDDLE_BELOW: [f64; 8] = [
    1.0,
    42.313_330_701_600_91,
    687.187_007_492_057_9,
    5_394.196_021_424_751,
    21_213.794_301_586_597,
    39_307.895_800_092_71,
    28_729.085_735_721_943,
    5_226.495_278_852_854,
];
const SIDE_ABOVE: [f64; 8] = [
    1.423_437_110_749_683_5,
    4.630_337_846_156_546,
    5.769_497_221_460_691,
    3.647_848_324_763_204_5,
    1.270_458_252_452_368_4,
    0.241_780_725_177_450_6,
    0.022_723_844_989_269_184,
    7.745_450_142_783_414e-4,
];
const SIDE_BELOW: [f64; 8] = [
    1.0,
    2.053_191_626_637_759,
    1.676_384_830_183_803_8,
    0.689_767_334_985_1,
    0.148_103_976_427_480_08,
    0.015_198_666_563_616_457,
    5.475_938_084_995_345e-4,
    1.050_750_071_644_416_9e-9,
];
const TAIL_ABOVE: [f64; 8] = [
    6.657_904_643_501_103,
    5.463_784_911_164_114,
    1.784_826_539_917_291_3,
    0.296_560_571_828_504_87,
    0.026_532_189_526_576_124,
    0.001_242_660_947_388_078_4,
    2.711_555_568_743_487_6e-5,
    2.010_334_399_292_288_1e-7,
];
const TAIL_BELOW: [f64; 8] = [
    1.0,
    0.599_832_206_555_888,
    0.136_929_880_922_735_8,
    0.014_875_361_290_850_615,
    7.868_691_311_456_133e-4,
    1.846_318_317_510_054_7e-5,
    1.421_511_758_316_446e-7,
    2.044_263_103_389_939_8e-15,
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn percentage_points_agree_with_another_library() {
        // Python 3.11 statistics.NormalDist().inv_cdf
        let rows = [
            (0.6, 0.253_347_103_135_799_8),
            (0.9, 1.281_551_565_544_600_8),
            (0.975, 1.959_963_984_540_053_6),
            (0.995, 2.575_829_303_548_9),
            (0.0005, -3.290_526_731_491_894_5),
            (1e-12, -7.034_483_825_301_132),
        ];
        for (p, wanted) in rows {
            let found = quantile(p);
            assert!((found - wanted).abs() < 1e-12, "{p}: {found}");
        }
    }
}
