// Question:    at which restriction of an area does this stove stop running, or waste so much that it must be cleaned?
// Equations:   smallest x with  −p_sense(x) < p_opens at low or high burn,  or  η(x) < η(0) − 0.05 at high burn,
//              or the pot's air below what its fuel needs; the exchanger's deposit insulates as it narrows: ln UA = −0.6·x.
// Symbols:     p_sense pressure where the sensing hose joins, Pa; p_opens the switch's opening point, Pa; η efficiency by
//              the flue gas's enthalpies, share of the net heating value.
// Validity:    one area alone, everything else clean; x up to 3 (95 % shut). Nothing found up to there: the area's usual limit.
// Assumptions: steady burn; the rated switch; A1 pellets as the pattern has them.
// Source:      the virtual stove; that a switch is left too little room before five points of efficiency are gone, or the
//              other way round, depends on where its hose joins.
// Worked:      a stove whose switch is joined to the firebox and opens at the vacuum of half-shut ash passages has its
//              ash passages' limit at x = 0.693.
using Emberwright.Stove;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Fire;

namespace Emberwright.Visits.Fouling;

/// <summary>Where an area's fouling ends: its limit as x and the reason in words.</summary>
/// <param name="X">Limit, −ln of the share left open.</param>
/// <param name="Why">What happens there.</param>
public sealed record FoulingEnd(double X, string Why)
{
    private const double Most = 3;
    private const double EfficiencyPoints = 0.05;
    private const double InsulationPerX = 0.6;

    /// <summary>The limits of a stove's areas.</summary>
    public static IReadOnlyDictionary<Parameter, FoulingEnd> Of(VirtualStove stove)
    {
        ArgumentNullException.ThrowIfNull(stove);
        return GrowthPrior.All.ToDictionary(prior => prior.Passage, prior => Of(stove, prior.Passage));
    }

    private static FoulingEnd Of(VirtualStove stove, Parameter passage)
    {
        var clean = State.Of(stove, passage, 0);
        var (low, high) = (0.0, Most);
        if (Trouble(State.Of(stove, passage, Most), clean, stove) is null) return Usual(passage);
        for (var i = 0; i < 20; i++)
        {
            var middle = (low + high) / 2;
            if (Trouble(State.Of(stove, passage, middle), clean, stove) is null) low = middle;
            else high = middle;
        }

        var found = new FoulingEnd(high, Trouble(State.Of(stove, passage, high), clean, stove)!);
        return Usual(passage) is { } usual && usual.X < found.X ? usual : found;
    }

    private static FoulingEnd Usual(Parameter passage) =>
        FaultList.All.FirstOrDefault(fault => fault.Fouling?.Parameter == passage)?.Fouling is { } limit
            ? new(-limit.Limit, "restriction past which trouble is common")
            : new(-Math.Log(0.5), "half shut");

    private static string? Trouble(State state, State clean, VirtualStove stove)
    {
        var opens = stove.Card?.SwitchOpensPa ?? stove.Pattern.Switch.OpensPa;
        if (!state.Burns) return "fire starved of air";
        if (clean.LowVacuumPa > opens && state.LowVacuumPa < opens) return "vacuum switch opens at low burn";
        if (clean.HighVacuumPa > opens && state.HighVacuumPa < opens) return "vacuum switch opens at high burn";
        return clean.Efficiency - state.Efficiency > EfficiencyPoints ? "efficiency five points down" : null;
    }

    private readonly record struct State(bool Burns, double LowVacuumPa, double HighVacuumPa, double Efficiency)
    {
        public static State Of(VirtualStove stove, Parameter passage, double x)
        {
            var parameters = new double[Enum.GetValues<Parameter>().Length];
            parameters[(int)passage] = -x;
            if (passage == Parameter.Exchanger) parameters[(int)Parameter.Insulation] = -InsulationPerX * x;
            var high = stove.Solve(parameters, Condition.HighBurn);
            var low = stove.Solve(parameters, Condition.LowBurn);
            var port = stove.Card?.SensePort ?? stove.Pattern.Switch.SensePort;
            return new State(
                high.Status == SolveStatus.Converged && low.Status == SolveStatus.Converged,
                -low.Value(Measure.Pressure, port), -high.Value(Measure.Pressure, port), EfficiencyOf(stove, high));
        }

        private static double EfficiencyOf(VirtualStove stove, StoveSolution state)
        {
            if (!(state.FlueAirRatio is >= 1 and <= 100)) return 0;
            var fuel = stove.Pattern.Fuel.Fuel;
            var gas = new Stoichiometry(fuel).FlueGasAt(state.FlueAirRatio);
            var room = (stove.Site.RoomC ?? 20) + 273.15;
            return FlueLoss.ByEnthalpy(gas, HeatingValue.Of(fuel).NetJPerKg, state.Value(Measure.Temperature, Places.Collar) + 273.15, room).Efficiency;
        }
    }
}
