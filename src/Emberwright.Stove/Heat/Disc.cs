// At a surface temperature, does a disc stand open or closed, and how sure is that?
//   acts between T ± tol on the way up; goes back between T − diff ± tol on the way down
// T marked temperature, tol tolerance, diff differential between acting and going back, K.
// The tolerance is taken as two standard deviations of a normal spread between specimens.
// Valid for snap-action bimetal discs on a surface in steady state. Assumes the disc has the surface's temperature.
// Source: common practice, no source: tolerance ±3 … 5 K, differential 8 … 17 K.
// Worked value: acts at 49 °C ± 4, surface at 53 °C and rising → acted with 97.7 %.
namespace Emberwright.Stove.Heat;

/// <summary>A bimetal disc switch. It is not a thermostat: it snaps at one marked temperature and returns well below it.</summary>
/// <param name="ActsAtC">Marked temperature, °C.</param>
/// <param name="ToleranceK">Tolerance of the mark, K.</param>
/// <param name="DifferentialK">How far below it goes back, K.</param>
/// <param name="ClosesOnRise">True for proof-of-fire and fan discs, false for limits.</param>
public sealed record Disc(double ActsAtC, double ToleranceK, double DifferentialK, bool ClosesOnRise)
{
    /// <summary>Probability that a healthy disc of this mark has acted at a temperature reached from below.</summary>
    /// <param name="surfaceC">Surface temperature, °C.</param>
    public double HasActedRising(double surfaceC) => Spread((surfaceC - ActsAtC) / (ToleranceK / 2));

    /// <summary>Probability that it still stands acted at a temperature reached from above.</summary>
    /// <param name="surfaceC">Surface temperature, °C.</param>
    public double StillActedFalling(double surfaceC) => Spread((surfaceC - (ActsAtC - DifferentialK)) / (ToleranceK / 2));

    /// <summary>Probability that its contact is closed.</summary>
    /// <param name="surfaceC">Surface temperature, °C.</param>
    /// <param name="rising">True when the temperature was reached from below.</param>
    public double IsClosed(double surfaceC, bool rising)
    {
        var acted = rising ? HasActedRising(surfaceC) : StillActedFalling(surfaceC);
        return ClosesOnRise ? acted : 1 - acted;
    }

    /// <summary>Standard normal distribution function, by the error-function form of Abramowitz &amp; Stegun 7.1.26 (error 1.5e-7).</summary>
    private static double Spread(double z)
    {
        var x = Math.Abs(z) / Math.Sqrt(2);
        var t = 1 / (1 + (0.3275911 * x));
        var tail = t * (0.254829592 + (t * (-0.284496736 + (t * (1.421413741 + (t * (-1.453152027 + (t * 1.061405429)))))))) * Math.Exp(-x * x);
        return z >= 0 ? 1 - (0.5 * tail) : 0.5 * tail;
    }
}
