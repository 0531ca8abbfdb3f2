// Question: how much fuel does the stove burn per hour, and how much ash does that leave?
// Equations: weighed: ṁ = m/t;  auger: ṁ = m₁·n·d·60;  ash per tonne = 1000·a/(1 − u).
// Symbols: m mass weighed, kg; t time, s; m₁ mass per turn, kg; n speed while turning, 1/min; d share of time turning;
//   a ash share as fired; u unburnt carbon in the residue, share of its mass.
// Validity: weighing 5 min or longer, auger's mass per turn taken from a weighed run with the same pellets (long pellets
//   and dust change it by 10 to 20 %).
// Source: definitions; the remark on pellets is common practice, no source.
// Worked value: 0.425 kg in 15 min is 1.7 kg/h.

namespace Emberwright.Stove.Fire;

/// <summary>Fuel per time and the ash it leaves.</summary>
public static class FuelRate
{
    /// <summary>Fuel rate from weighing and a watch, kg/h.</summary>
    /// <param name="massKg">Fuel burned or fed, kg; more than 0, up to 100.</param>
    /// <param name="seconds">Time it took, s; 60 s … 7 days.</param>
    /// <exception cref="InputException">Mass or time outside its range.</exception>
    public static double Weighed(double massKg, double seconds) =>
        InputException.Require(massKg, 1e-3, 100, "fuel weighed", "kg", "Weigh what was fed, in kg.")
        / InputException.Require(seconds, 60, 604_800, "time", "s", "Feed at least a minute into a bucket; five minutes are better.") * 3600;

    /// <summary>Fuel rate from turns of the auger, kg/h.</summary>
    /// <param name="kgPerTurn">Fuel per turn, kg; 1e-4 … 0.2.</param>
    /// <param name="turnsPerMinute">Speed while turning, 1/min; 0.1 … 60.</param>
    /// <param name="dutyShare">Share of time the auger turns, 0 … 1.</param>
    /// <exception cref="InputException">A value outside its range.</exception>
    public static double FromAuger(double kgPerTurn, double turnsPerMinute, double dutyShare) =>
        InputException.Require(kgPerTurn, 1e-4, 0.2, "fuel per turn", "kg", "Weigh ten turns' feed and divide by ten.")
        * InputException.Require(turnsPerMinute, 0.1, 60, "auger speed", "1/min", "Count turns for a minute while it turns.")
        * InputException.Require(dutyShare, 0, 1, "auger duty", "", "Time on divided by time on and off.") * 60;

    /// <summary>Residue per tonne of fuel, kg.</summary>
    /// <param name="fuel">Fuel as fired.</param>
    /// <param name="unburntShare">Unburnt carbon in the residue, share of its mass; 0 … 0.9.</param>
    /// <exception cref="InputException">Unburnt share outside its range.</exception>
    public static double ResidueKgPerTonne(Fuel fuel, double unburntShare = 0) =>
        1000 * fuel.AshAsFired / (1 - InputException.Require(unburntShare, 0, 0.9, "unburnt share", "", "Grey ash has almost none, black residue about half."));
}
