// How long is a vent run by the trade's rule?
//   EVL = horizontal + vertical/2 + 5 ft·(90° elbows + tees) + 3 ft·(45° elbows)
// Above 15 ft, or above about 2500 ft altitude, go from 3 in to 4 in. The appliance's listing takes precedence.
// Valid as a rule of thumb for 3 and 4 in pellet vent. Source: common practice, no source.
// Worked value: 2 ft horizontal, 4 ft vertical, one tee → 2 + 2 + 5 = 9 ft.
namespace Emberwright.Stove.Vent;

/// <summary>The trade's equivalent vent length and what it asks for.</summary>
/// <param name="Feet">Equivalent length, ft.</param>
/// <param name="AsksForFourInch">True when a 3 in run should be 4 in by the rule.</param>
/// <param name="Reason">Why, or that the run is within the rule.</param>
public sealed record EquivalentLength(double Feet, bool AsksForFourInch, string Reason)
{
    /// <summary>Longest run in 3 in by the rule, ft.</summary>
    public const double LongestFeet = 15;

    /// <summary>Altitude above which the rule asks for 4 in, m (2500 ft).</summary>
    public const double HighestM = 762;

    private const double MetresPerFoot = 0.3048;

    /// <summary>Equivalent length, m.</summary>
    public double Metres => Feet * MetresPerFoot;

    /// <summary>Applies the rule.</summary>
    public static EquivalentLength Of(VentRun run, double altitudeM)
    {
        var feet = (run.HorizontalM / MetresPerFoot) + (Math.Abs(run.VerticalM) / MetresPerFoot / 2)
            + (5 * (run.Elbows90 + run.Tees)) + (3 * run.Elbows45);
        var narrow = run.DiameterMm < 95;
        return (feet > LongestFeet, altitudeM > HighestM, narrow) switch
        {
            (true, _, true) => new EquivalentLength(feet, true, "longer than 15 ft equivalent"),
            (_, true, true) => new EquivalentLength(feet, true, "above 2500 ft altitude"),
            _ => new EquivalentLength(feet, false, "within the rule"),
        };
    }
}
