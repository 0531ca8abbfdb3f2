// Question:    how fast does an area of a stove of this pattern foul, before anything was seen of this stove?
// Equations:   x(F) = x_left + g·e^ε·F;  ln g ~ N(ln g₀, s²);  ε ~ N(0, t²) anew for every season.
// Symbols:     x −ln of the share left open; F fuel burned, t (metric); g growth per tonne of this stove; g₀ median of
//              the pattern; s spread between stoves; t spread between seasons of one stove (fuel, damper, weather), ln.
// Validity:    0 … 10 t between two services; beyond it deposits fall off by their own weight and the law overstates.
// Assumptions: growth is in proportion to fuel burned; ash content, excess air and grade act through g and ε.
// Source:      the medians are those diagnosis uses for a stove in use; the spreads are from memory. That fouling is
//              quick is published: in a field test five of six stoves lost about 5 % efficiency in a month or one tonne.
// Worked:      ash passages 0.25 per tonne: after 2 t the median is x = 0.5, a restriction of 39 %.
using Emberwright.Stove;

namespace Emberwright.Visits.Fouling;

/// <summary>What is known of an area's growth before this stove was seen.</summary>
/// <param name="Passage">The passage, wheel or blower that fouls.</param>
/// <param name="MedianPerTonne">Median growth of x per tonne of fuel.</param>
/// <param name="LnSdBetweenStoves">Spread between stoves of a pattern, ln.</param>
/// <param name="LnSdBetweenSeasons">Spread between seasons of one stove, ln.</param>
public sealed record GrowthPrior(Parameter Passage, double MedianPerTonne, double LnSdBetweenStoves = 0.6, double LnSdBetweenSeasons = 0.3)
{
    /// <summary>The areas that are forecast. The intake hardly fouls and is not among them.</summary>
    public static IReadOnlyList<GrowthPrior> All { get; } =
    [
        new(Parameter.AshPassages, 0.25), new(Parameter.Exchanger, 0.10), new(Parameter.Vent, 0.10), new(Parameter.BurnPot, 0.10),
        new(Parameter.Wheel, 0.05), new(Parameter.RoomAir, 0.15),
    ];
}

/// <summary>One season seen: what the last visit left and what this one found.</summary>
/// <param name="Tonnes">Fuel burned in between, t; above 0.</param>
/// <param name="Left">As left.</param>
/// <param name="Found">As found.</param>
public sealed record SeasonSeen(double Tonnes, Deposit Left, Deposit Found);
