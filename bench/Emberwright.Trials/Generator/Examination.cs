// What does somebody find who asks, looks at or measures the hidden stove?
// Equations: readings: the real stove solved in the condition, through the instruments; meter readings: the circuit with the
//            faulty components, the vacuum switch open where its own vacuum is weaker than the value at which it acts, all volts and
//            amps times e^(supply); signs: SignOdds on the faults that are there.
//            complaint: where the burn sequence stops, the word for it with 0.85, else by the stated probabilities; where it runs,
//            the words for a stop count a tenth.
//            code: where the sequence ends with an alarm, that one with 0.85, else as stated.
// Symbols: supply ln of the voltage over its rating.
// Validity: conditions with a fire only on a stove that keeps one.
// Assumptions: the same look at the same stove gives the same answer until something is done to it.
// Source: shares from memory, no source.
// Worked: −
using Emberwright.Diagnosis.Safety;
using Emberwright.Diagnosis.Signs;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Faults;

namespace Emberwright.Trials.Generator;

/// <summary>Answers what is asked of a hidden stove.</summary>
internal sealed class Examination(HiddenStove stove)
{
    private const double AsItWas = 0.85;
    private const double StopsAtOnce = 0.5;

    private static readonly IReadOnlyList<string> Stops = [Complaints.Dead, Complaints.NoFeed, Complaints.NoLight, Complaints.StopsProving, Complaints.AutomaticOnly];

    private readonly ElectricalReadings _circuit = new(stove.Case.Pattern.Wiring, Meter.Ordinary);

    /// <summary>True when a fire can be had for readings on it.</summary>
    public bool Burns => stove.Course.Outcome is BurnOutcome.Runs or BurnOutcome.StopsLater && !stove.Discrete.Any(StopsUnreached);

    /// <summary>True when it does what it should: it runs, and nothing is left that somebody would call about.</summary>
    public bool Works => stove.Course.Outcome == BurnOutcome.Runs && !stove.Unlisted
        && stove.Discrete.All(f => StatedDue(f) >= StopsAtOnce);

    /// <summary>The complaint, as an outcome of its sign.</summary>
    public string Complaint()
    {
        var sign = stove.Catalogue.Sign(Complaints.Sign)!;
        var chance = stove.Always("complaint");
        var outcome = stove.Course.Outcome;
        if (outcome != BurnOutcome.Runs && chance.Happens(AsItWas) && sign.Outcomes.Any(o => o.Id == SequenceSymptoms.Word[outcome])) return SequenceSymptoms.Word[outcome];
        var raw = stove.Faults.Select(f => FaultList.On(stove.Case.Pattern.Id).First(r => r.Id == f.Id)).ToArray();
        var odds = SignOdds.Stated(sign, raw, stove.Unlisted, stove.Always("complaint odds"), stove.Mismatch);
        if (outcome == BurnOutcome.Runs && !stove.Discrete.Any(StopsUnreached))
            for (var o = 0; o < odds.Length; o++)
                if (SequenceSymptoms.Word.Values.Contains(sign.Outcomes[o].Id)) odds[o] *= 0.1;
        return sign.Outcomes[chance.Pick(odds)].Id;
    }

    /// <summary>What is seen, heard or told.</summary>
    /// <param name="signId">Sign of the catalogue.</param>
    public string See(string signId)
    {
        var sign = stove.Catalogue.Sign(signId)!;
        var chance = stove.Now($"sign {signId}");
        if (signId == "code" && stove.Course.Alarm is { } alarm && sign.Outcomes.Any(o => o.Id == alarm) && chance.Happens(AsItWas)) return alarm;
        return sign.Outcomes[chance.Pick(Odds(sign))].Id;
    }

    /// <summary>What an instrument shows; null when the reading cannot be had.</summary>
    /// <param name="observable">What is read.</param>
    public double? Read(Observable observable)
    {
        var chance = stove.Now($"read {observable}");
        var (measure, place, condition) = observable;
        if (_circuit.Knows(measure, place)) return stove.Instruments.Show(observable, Electrical(observable), chance);
        var burning = condition.Fire is FireState.High or FireState.Low;
        if (burning && !Burns) return null;
        if (measure == Measure.CarbonMonoxide && place != Places.Flue)
            return stove.Catalogue.Sign("room-monoxide") is not null && See("room-monoxide") == "rise" ? SafetyRules.CoRise + chance.Exponential(20) : chance.Between(0, 3);
        var state = stove.State(condition);
        if (burning && state.Status == SolveStatus.NoSteadyFire || state.Status == SolveStatus.NotConverged || !state.Knows(measure, place)) return null;
        return stove.Instruments.Show(observable, state.Value(measure, place), chance);
    }

    private double[] Odds(Sign sign)
    {
        var stating = stove.Discrete.Where(f => f.Symptoms.Any(s => s.Sign == sign.Id)).ToArray();
        if (sign.Margin is { } margin && stating.Length == 0 && Quantity(margin) is { } quantity) return SignOdds.Graded(margin, quantity);
        return SignOdds.Stated(sign, sign.Margin is null ? stove.Faults : stating, stove.Unlisted, stove.Always($"odds {sign.Id}"), stove.Mismatch);
    }

    private double? Quantity(PhysicalMargin margin)
    {
        if (margin.Parameter is { } parameter) return stove.Has(parameter) ? stove.Seen(parameter) : null;
        if (margin.Quantity is not { } observable) return null;
        var state = stove.State(observable.Condition);
        return state.Knows(observable.Measure, observable.Place) ? state.Value(observable.Measure, observable.Place) : null;
    }

    private double Electrical(Observable observable)
    {
        var open = _circuit.Wiring.HasComponent(ComponentIds.VacuumSwitch) && !IsClosed(observable.Condition) ? new[] { ComponentIds.VacuumSwitch } : [];
        var value = _circuit.Predict(observable, open, stove.Changes);
        return observable.Measure == Measure.Resistance ? value : value * Math.Exp(stove.Parameters()[(int)Parameter.Supply]);
    }

    private bool IsClosed(Condition condition)
    {
        var state = stove.State(condition);
        var acts = stove.Case.Pattern.Switch.ClosesPa * Math.Exp(stove.Parameters()[(int)Parameter.SwitchThreshold]);
        var still = stove.Changes.Any(c => c.Component is ComponentIds.CombustionBlower or ComponentIds.CombustionOutput && c.State is ComponentState.Open or ComponentState.Stalled);
        return !still && -state.Value(Measure.Pressure, Places.SwitchHose) >= acts;
    }

    // What the sequence does not reach (an empty hopper, an ashed-up passage) stops the stove when its complaints say so.
    private static bool StopsUnreached(Fault fault) =>
        !BurnOdds.Reaches(fault) && fault.Symptoms.Where(s => s.Sign == Complaints.Sign && Stops.Contains(s.Outcome)).Sum(s => s.Probability) >= StopsAtOnce;

    private static double StatedDue(Fault fault) =>
        fault.Symptoms.Where(s => s.Sign == Complaints.Sign && s.Outcome == Complaints.Due).Sum(s => s.Probability);
}
