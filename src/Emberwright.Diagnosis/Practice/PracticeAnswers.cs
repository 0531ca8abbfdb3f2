// What does somebody find who asks, looks at or measures the stove hidden for practice?
// Equations: air, fire and heat: the virtual stove in the condition, plus the instrument's scatter;
//            circuit: the wiring with its faulty parts, the vacuum switch open where its vacuum is weaker than the value at which it acts;
//            graded signs P(o) = Φ((cut_o − q)/s) − Φ((cut_{o−1} − q)/s), others by the faults that are there, both with their lapse.
// Symbols: q true quantity, s blur of the judgement.
// Validity: readings on a fire only where the stove keeps one.
// Assumptions: the same look at the same stove gives the same answer until something is done to it.
// Source: scatter as diagnosis supposes it; shares of telling from memory, no source.
// Worked: level Plain, stove ends without feed: the complaint is that no fuel feeds.
using Emberwright.Diagnosis.Inference;
using Emberwright.Diagnosis.Safety;
using Emberwright.Diagnosis.Signs;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Practice;

/// <summary>Answers what is asked of a practice stove.</summary>
internal sealed class PracticeAnswers(PracticeStove stove)
{
    private const double StopsAnyway = 0.5;

    private readonly ElectricalReadings _circuit = new(stove.Case.Pattern.Wiring, Meter.Ordinary);

    /// <summary>True when a fire can be had for readings on it.</summary>
    public bool Burns => stove.Course is BurnOutcome.Runs or BurnOutcome.StopsLater && !stove.Discrete.Any(StopsUnreached);

    /// <summary>The complaint, as an outcome of its sign; null when nobody would call.</summary>
    public string? Complaint()
    {
        var chance = stove.Now("complaint");
        if (stove.Course != BurnOutcome.Runs && chance.Happens(stove.Level.Telling())) return SequenceSymptoms.Word[stove.Course];
        var sign = stove.Catalogue.Sign(Complaints.Sign)!;
        var odds = Stated(sign, stove.Faults);
        for (var o = 0; o < odds.Length; o++)
        {
            if (sign.Outcomes[o].Id is Complaints.Due or Complaints.CoAlarm or Complaints.HopperSmoke) odds[o] = 0;
            if (stove.Course == BurnOutcome.Runs && !stove.Discrete.Any(StopsUnreached) && SequenceSymptoms.Word.Values.Contains(sign.Outcomes[o].Id)) odds[o] = 0;
        }

        return odds.Sum() < 1e-6 ? null : sign.Outcomes[chance.Pick(odds)].Id;
    }

    /// <summary>What is seen, heard or told: an outcome of the sign.</summary>
    /// <param name="id">Id of the sign.</param>
    public string See(string id)
    {
        var sign = stove.Catalogue.Sign(id)!;
        var chance = stove.Now($"sign {id}");
        if (id == Planning.Rules.RunsNow) return stove.Faults.Count == 0 ? "runs" : "same";
        var stating = stove.Discrete.Where(f => f.Symptoms.Any(s => s.Sign == id)).ToList();
        if (stating.Count == 0 && Turning(id) is { } turning) return turning;
        if (sign.Margin is null && stove.Faults.All(f => f.Symptoms.All(s => s.Sign != id)) && chance.Happens(stove.Level.Quiet())) return sign.Outcomes.MaxBy(o => o.Usual)!.Id;
        var odds = sign.Margin is { } margin && stating.Count == 0 && Quantity(margin) is { } quantity
            ? Graded(margin, quantity)
            : Stated(sign, sign.Margin is null ? stove.Faults : stating);
        return sign.Outcomes[chance.Pick(odds)].Id;
    }

    /// <summary>What an instrument shows; null when the reading cannot be had.</summary>
    /// <param name="observable">What is read.</param>
    public double? Read(Observable observable)
    {
        var (measure, place, condition) = observable;
        if (_circuit.Knows(measure, place)) return Show(observable, Electrical(observable));
        var burning = condition.Fire is FireState.High or FireState.Low;
        if (burning && !Burns) return null;
        if (measure == Measure.CarbonMonoxide && place != Places.Flue)
            return stove.Catalogue.Sign("room-monoxide") is not null && See("room-monoxide") == "rise" ? SafetyRules.CoRise + Math.Round(stove.Now("room").Exponential(15)) : 0;
        var state = stove.State(condition);
        return burning && state.Status == SolveStatus.NoSteadyFire || state.Status == SolveStatus.NotConverged || !state.Knows(measure, place)
            ? null
            : Show(observable, state.Value(measure, place));
    }

    private double Show(Observable observable, double value)
    {
        if (!double.IsFinite(value)) return value;
        var chance = stove.Now($"read {observable}");
        var sd = stove.Level.Scatter() * Noise.Own(observable, value);
        return observable.Measure switch
        {
            Measure.CarbonMonoxide => value * Math.Exp(chance.Normal(0, sd)),
            Measure.Voltage => Math.Abs(value) < 1 ? value : value + chance.Normal(0, 0.5 * sd),
            Measure.Oxygen or Measure.CarbonDioxide => Math.Clamp(value + chance.Normal(0, sd), 0, 20.9),
            Measure.Current or Measure.Resistance or Measure.Capacitance or Measure.Feed or Measure.Speed or Measure.Flow or Measure.Duration => Math.Max(value + chance.Normal(0, 0.5 * sd), 0),
            Measure.Pressure or Measure.Temperature => value + chance.Normal(0, sd),
        };
    }

    private double Electrical(Observable observable)
    {
        string[] open = _circuit.Wiring.HasComponent(ComponentIds.VacuumSwitch) && !SwitchClosed(observable.Condition) ? [ComponentIds.VacuumSwitch] : [];
        var value = _circuit.Predict(observable, open, stove.Changes);
        return observable.Measure == Measure.Resistance ? value : value * Math.Exp(stove.Parameters()[(int)Parameter.Supply]);
    }

    private bool SwitchClosed(Condition condition)
    {
        if (stove.Changes.Any(c => c.Component is ComponentIds.CombustionBlower or ComponentIds.CombustionOutput && c.State is ComponentState.Open or ComponentState.Stalled)) return false;
        var acts = stove.Case.Pattern.Switch.ClosesPa * Math.Exp(stove.Parameters()[(int)Parameter.SwitchThreshold]);
        return -stove.State(condition).Value(Measure.Pressure, Places.SwitchHose) >= acts;
    }

    // What turns and glows follows from the circuit where no fault says otherwise.
    private string? Turning(string sign) => sign switch
    {
        "feed-pulse" => Draws(ComponentIds.FeedMotor) ? "turns" : "still",
        "feed-drop" when !Draws(ComponentIds.FeedMotor) => "none",
        "igniter-glow" => Draws(ComponentIds.Igniter) ? "glows" : "dark",
        "combustion-blower-run" => Draws(ComponentIds.CombustionBlower) ? "full" : "still",
        _ => null,
    };

    private bool Draws(string part) => Electrical(new Observable(Measure.Current, part, Condition.FanOnly)) > 0.01;

    private double? Quantity(PhysicalMargin margin)
    {
        if (margin.Parameter is { } parameter) return stove.Seen(parameter);
        if (margin.Quantity is not { } observable) return null;
        var state = stove.State(observable.Condition);
        return state.Knows(observable.Measure, observable.Place) ? state.Value(observable.Measure, observable.Place) : null;
    }

    private static double[] Graded(PhysicalMargin margin, double quantity)
    {
        var odds = new double[margin.Cuts.Count + 1];
        for (var o = 0; o < odds.Length; o++)
        {
            var above = o < margin.Cuts.Count ? Normal.Below((margin.Cuts[o] - quantity) / margin.Blur) : 1;
            var below = o > 0 ? Normal.Below((margin.Cuts[o - 1] - quantity) / margin.Blur) : 0;
            odds[o] = (1 - margin.Lapse) * Math.Max(above - below, 0) + margin.Lapse / odds.Length;
        }

        return odds;
    }

    private static double[] Stated(Sign sign, IReadOnlyList<Fault> present)
    {
        var table = new SignTable(sign, present);
        int[] all = [.. Enumerable.Range(0, present.Count)];
        return [.. Enumerable.Range(0, sign.Outcomes.Count).Select(o => table.Probability(o, all))];
    }

    // What the sequence does not reach (an empty hopper, an ashed-up passage) stops the stove when its complaints say so.
    private static bool StopsUnreached(Fault fault) => !BurnOdds.Reaches(fault)
        && fault.Symptoms.Where(s => s.Sign == Complaints.Sign && SequenceSymptoms.Word.Values.Contains(s.Outcome) && s.Outcome != Complaints.StopsLater).Sum(s => s.Probability) >= StopsAnyway;
}
