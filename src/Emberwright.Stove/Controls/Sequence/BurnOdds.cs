// How often does a stove with this fault end each way, over its severity and the spread of sound stoves?
// Equation: relative frequency of each outcome over draws: parameters ~ N(0, sd²) of the pattern plus the fault's N(mean, sd²); a
//   fouled passage, wheel or surface is limit − Exp(mean beyond), and a fouled exchanger insulates by 0.6 of that besides.
// Symbols: sd standard deviation of each parameter, in its own unit.
// Validity: faults that act on parameters or circuit; for others the catalogue's stated probabilities hold. The standard error of a
//   frequency p over n draws is √(p(1 − p)/n).
// Assumptions: draws are independent; 2 h from a cold start, highest setting wanted.
// Source: Monte Carlo method (any statistics text).
// Worked value: 400 draws give a frequency of 0.5 to ±0.025.

using System.Collections.Immutable;
using Emberwright.Stove.Faults;

namespace Emberwright.Stove.Controls.Sequence;

/// <summary>How often a stove ends each way.</summary>
/// <param name="Draws">Number of simulated starts.</param>
/// <param name="Frequency">Share of each outcome, 0 … 1, by <see cref="BurnOutcome"/>; they sum to 1.</param>
/// <param name="Alarms">Share of starts that end with each alarm, by its id.</param>
public sealed record BurnOdds(int Draws, ImmutableDictionary<BurnOutcome, double> Frequency, ImmutableDictionary<string, double> Alarms)
{
    private const double RunS = 2 * 3600;

    /// <summary>Share of starts that fed no fuel, 0 … 1.</summary>
    public double NoFeed => Frequency.GetValueOrDefault(BurnOutcome.NoFeed);

    /// <summary>Share of starts that lit and then stopped before the fire was proved, 0 … 1.</summary>
    public double LightsThenStops => Frequency.GetValueOrDefault(BurnOutcome.LightsThenStops);

    /// <summary>True when the sequence can say what a fault does: it acts on parameters (fouling does) or on the circuit.</summary>
    /// <param name="fault">The fault.</param>
    public static bool Reaches(Fault fault) => fault.Shifts.Count > 0 || fault.Circuit.Count > 0 || fault.Fouling is not null;

    /// <summary>Simulates starts of a stove with a fault, or of a sound one.</summary>
    /// <param name="stove">The stove.</param>
    /// <param name="fault">The fault; null is none.</param>
    /// <param name="draws">Number of starts, 1 … 100 000.</param>
    /// <param name="random">Source of randomness.</param>
    /// <param name="background">
    /// Draws the parameters of a stove without the fault; null takes the pattern's spread of clean stoves, and with a fault only
    /// those that run without it.
    /// </param>
    /// <exception cref="InputException">The number of draws is out of range.</exception>
    public static BurnOdds Of(VirtualStove stove, Fault? fault, int draws, Random random, Func<Random, double[]>? background = null)
    {
        InputException.Require(draws, 1, 100_000, "simulated starts", "", "A few hundred are enough.");
        var outcomes = new Dictionary<BurnOutcome, int>();
        var alarms = new Dictionary<string, int>(StringComparer.Ordinal);
        var scenario = new BurnScenario { Changes = [.. fault?.Circuit ?? []], Automatic = ConcernsThermostat(fault) };
        for (var i = 0; i < draws; i++)
        {
            var parameters = background?.Invoke(random) ?? (fault is null ? CleanStove(stove, random) : SoundStove(stove, random));
            foreach (var shift in Shifts(fault)) parameters[(int)shift.Parameter] += shift.Mean + shift.Sd * Normal(random);
            Foul(fault?.Fouling, parameters, random);
            var run = BurnForecast.Run(stove, parameters, scenario, RunS);
            outcomes[run.Outcome] = outcomes.GetValueOrDefault(run.Outcome) + 1;
            if (run.Alarm is { } alarm) alarms[alarm] = alarms.GetValueOrDefault(alarm) + 1;
        }
        return new BurnOdds(draws,
            outcomes.ToImmutableDictionary(o => o.Key, o => (double)o.Value / draws),
            alarms.ToImmutableDictionary(a => a.Key, a => (double)a.Value / draws));
    }

    private static void Foul(FoulingLimit? fouling, double[] parameters, Random random)
    {
        if (fouling is null) return;
        var left = fouling.Limit + fouling.Beyond * Math.Log(1 - random.NextDouble());
        parameters[(int)fouling.Parameter] += left;
        if (fouling.Parameter == Parameter.Exchanger) parameters[(int)Parameter.Insulation] += FoulingLimit.InsulationPerRestriction * left;
    }

    private static bool ConcernsThermostat(Fault? fault) =>
        fault?.Circuit.Any(c => c.Component.StartsWith("thermostat", StringComparison.Ordinal)) ?? false;

    // Where the circuit already says what a load does, the same fault's shift of that load would count it twice.
    private static IEnumerable<ParameterShift> Shifts(Fault? fault) => (fault?.Shifts ?? []).Where(s => s.Parameter switch
    {
        Parameter.RoomAir => !fault!.Circuit.Any(c => c.Component.StartsWith("room-air", StringComparison.Ordinal)),
        Parameter.Feed => !fault!.Circuit.Any(c => c.Component.StartsWith("feed", StringComparison.Ordinal)),
        Parameter.ProofSensor => !fault!.Circuit.Any(c => c.Component is ComponentIds.ExhaustProbe or ComponentIds.Thermocouple),
        Parameter.BlowerSpeed => !fault!.Circuit.Any(c => c.Component is ComponentIds.RunCapacitor or ComponentIds.CombustionBlower),
        _ => true,
    });

    /// <summary>
    /// Draws the parameters of a clean stove that runs: one that does not run when clean was never sold, its switch is
    /// chosen for its own vacuum.
    /// </summary>
    /// <param name="stove">The stove.</param>
    /// <param name="random">Source of randomness.</param>
    public static double[] SoundStove(VirtualStove stove, Random random)
    {
        for (var attempt = 0; ; attempt++)
        {
            var parameters = CleanStove(stove, random);
            if (attempt == 20 || BurnForecast.Run(stove, parameters, new BurnScenario(), RunS).Outcome == BurnOutcome.Runs) return parameters;
        }
    }

    private static double[] CleanStove(VirtualStove stove, Random random)
    {
        var parameters = new double[Enum.GetValues<Parameter>().Length];
        foreach (var baseline in stove.Pattern.Parameters)
            parameters[(int)baseline.Parameter] = Normal(random) * (stove.Card is null ? baseline.PatternSd : baseline.CardSd);
        return parameters;
    }

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
