// How do fuel bed, exchanger, exhaust and discs follow what the controls do?
// Equation: dx/dt = (x_steady − x)/τ for each, stepped exactly: x += (x_steady − x)(1 − e^(−Δt/τ)).
//   Fuel in the pot: dm/dt = feed − burn; burn = m/τ_pot while there is a fire. It lights once the igniter has worked t_i seconds on fuel.
// Symbols: τ lag (s), m fuel in the pot (s of highest feed), t_i (s).
// Validity: steps well below the shortest lag; below 5 % of the highest feed a pellet fire counts as out.
// Assumptions: pressures follow at once; one lag each for pot, exchanger, exhaust and disc, in series.
// Source: first-order lag (any control text); the constants are common practice, no source.
// Worked value: after one lag a first-order system has gone 63.2 % of its way.

namespace Emberwright.Stove.Controls.Sequence;

/// <summary>Time constants of a stove, s.</summary>
/// <param name="PotS">Fuel bed.</param>
/// <param name="ExchangerS">Exchanger's mass.</param>
/// <param name="ExhaustS">Exhaust and its probe.</param>
/// <param name="DiscS">A disc on a warm wall.</param>
/// <param name="FlameS">Thermocouple near the flame.</param>
/// <param name="WaterS">Water jacket; infinity without one.</param>
/// <param name="LightsAfterS">Time a healthy igniter needs to light fuel, s.</param>
public sealed record SequenceLags(
    double PotS, double ExchangerS, double ExhaustS, double DiscS, double FlameS, double WaterS, double LightsAfterS)
{
    /// <summary>A stove of middling mass (common practice, no source).</summary>
    public static SequenceLags Ordinary { get; } = new(150, 420, 90, 90, 60, double.PositiveInfinity, 240);
}

/// <summary>Drives the sequence by equilibria and lags.</summary>
/// <param name="steady">Equilibria of the stove in its present state of repair.</param>
/// <param name="lags">Its time constants.</param>
/// <param name="igniterReaches">Share of the igniter's heat that reaches the fuel, 0 … 1: low when its passage is ashed up or the pot sits wrong.</param>
public sealed class LaggedDrivers(ISteadyStove steady, SequenceLags lags, double igniterReaches = 1) : ISequenceDrivers
{
    private const double OutBelow = 0.05;
    private const double LeastFuelS = 20;

    /// <inheritdoc/>
    public SequenceReadings Cold
    {
        get
        {
            var room = steady.RoomC;
            return new(steady.At(0, 0, 0, false).SensePa, false, 0, 0, room, room, room, room, room, room, 0);
        }
    }

    /// <inheritdoc/>
    public SequenceReadings Next(SequenceReadings now, in RunningLoads running, double stepS)
    {
        var burn = now.Burning ? now.PotFuelShare / lags.PotS : 0;
        var fuel = Math.Max(0, now.PotFuelShare + stepS * (running.FeedShare - burn));
        var heated = Heated(now, running, fuel, stepS);
        var burning = now.Burning ? burn > OutBelow : heated >= lags.LightsAfterS;
        if (!burning) burn = 0;
        var point = steady.At(burn, running.CombustionShare, running.RoomAirShare, running.PumpTurns);
        if (burning && (point.Starved || running.CombustionShare == 0 && !DrawsByItself(point)))
        {
            burning = false;
            point = steady.At(0, running.CombustionShare, running.RoomAirShare, running.PumpTurns);
        }
        var exchanger = Toward(now.ExchangerC, point.ExhaustC, lags.ExchangerS, stepS);
        var exhaust = Toward(now.ExhaustC, exchanger, lags.ExhaustS, stepS);
        return new SequenceReadings(
            point.SensePa, burning, burning ? burn : 0, fuel,
            Toward(now.FlameC, point.FlameC, lags.FlameS, stepS),
            exchanger, exhaust,
            Toward(now.ProofDiscC, exhaust, lags.DiscS, stepS),
            Toward(now.LimitC, point.LimitC, lags.ExchangerS, stepS),
            Toward(now.WaterC, point.WaterC, lags.WaterS, stepS),
            burning ? 0 : heated);
    }

    private double Heated(SequenceReadings now, in RunningLoads running, double fuel, double stepS)
    {
        var works = running.IgniterShare * igniterReaches;
        if (now.Burning || fuel < LeastFuelS || running.CombustionShare == 0) return now.HeatedS;
        return works > 0.6 ? now.HeatedS + stepS * works : 0;
    }

    private static bool DrawsByItself(in SteadyPoint point) => point.SensePa < -2;

    private static double Toward(double from, double to, double lagS, double stepS) => from + (to - from) * (1 - Math.Exp(-stepS / lagS));
}
