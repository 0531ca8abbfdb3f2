using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;
using Emberwright.Trials.Generator;

namespace Emberwright.Trials.Calibration;

/// <summary>How much is known of a stove, from scant to rich; each rung holds everything of those below.</summary>
internal enum Rung
{
    /// <summary>The complaint alone.</summary>
    Complaint,
    /// <summary>And a few questions answered by telephone.</summary>
    Answers,
    /// <summary>And readings as found: on the fire where there is one, else with the fan only.</summary>
    AsFound,
    /// <summary>And the three-state test at all ports.</summary>
    ThreeState,
    /// <summary>And the meter on the wiring.</summary>
    Electrical,
}

/// <summary>Gathers the evidence of each rung from a hidden stove.</summary>
internal static class EvidenceLadder
{
    private static readonly IReadOnlyList<string> Questions =
        ["onset", "happens", "code", "glass", "fuel", "work-done", "warm-air-change", "feed-pulse", "combustion-blower-run", "smell"];

    private static readonly IReadOnlyList<Observable> OnTheFire =
    [
        Pa(Places.Firebox, Condition.HighBurn), Pa(Places.BlowerInlet, Condition.HighBurn), Pa(Places.Collar, Condition.HighBurn),
        new(Measure.Oxygen, Places.Flue, Condition.HighBurn), new(Measure.CarbonMonoxide, Places.Flue, Condition.HighBurn),
        new(Measure.Temperature, Places.Collar, Condition.HighBurn),
    ];

    private static readonly IReadOnlyList<Observable> ThreeStates =
    [
        .. from state in new[] { Condition.FanOnly, Condition.DoorOpen, Condition.IntakeStopped, Condition.BlowerOff }
           from port in new[] { Places.Firebox, Places.BlowerInlet, Places.Collar }
           select Pa(port, state),
    ];

    private static readonly IReadOnlyList<Observable> Wiring =
    [
        .. new[] { Places.Supply, ComponentIds.VacuumSwitch, ComponentIds.HighLimitDisc, ComponentIds.FeedMotor, ComponentIds.Igniter, ComponentIds.CombustionBlower }
            .Select(p => new Observable(Measure.Voltage, p, Condition.FanOnly)),
        .. new[] { ComponentIds.Igniter, ComponentIds.FeedMotor, ComponentIds.CombustionBlower, ComponentIds.RoomAirBlower }
            .Select(p => new Observable(Measure.Resistance, p, Condition.BlowerOff)),
    ];

    /// <summary>Each rung with all evidence up to it.</summary>
    public static IEnumerable<(Rung Rung, IReadOnlyList<Evidence> Evidence)> Of(HiddenStove stove)
    {
        var look = new Examination(stove);
        var evidence = new List<Evidence> { new SignEvidence("complaint", 0, Complaints.Sign, look.Complaint()) };
        yield return (Rung.Complaint, [.. evidence]);
        evidence.AddRange(Questions.Where(q => stove.Catalogue.Sign(q) is not null).Select(q => new SignEvidence(q, 0, q, look.See(q))));
        yield return (Rung.Answers, [.. evidence]);
        evidence.AddRange(Readings(look, stove, look.Burns ? OnTheFire : [Pa(Places.Firebox, Condition.FanOnly)]));
        yield return (Rung.AsFound, [.. evidence]);
        evidence.AddRange(Readings(look, stove, ThreeStates).Where(r => evidence.All(e => e.Id != r.Id)));
        yield return (Rung.ThreeState, [.. evidence]);
        evidence.AddRange(Readings(look, stove, Wiring));
        yield return (Rung.Electrical, [.. evidence]);
    }

    private static IEnumerable<ReadingEvidence> Readings(Examination look, HiddenStove stove, IReadOnlyList<Observable> observables) =>
        from observable in observables
        where observable.Measure is not (Measure.Voltage or Measure.Resistance) || stove.Case.Pattern.Wiring.HasComponent(observable.Place) || stove.Case.Pattern.Wiring.HasPoint(observable.Place)
        let value = look.Read(observable)
        where value is not null && !double.IsNaN(value.Value)
        select new ReadingEvidence($"{observable.Measure} {observable.Place} {observable.Condition.Fire} {observable.Condition.Blower} {observable.Condition.Opening}", 0, observable, value.Value);

    private static Observable Pa(string place, Condition condition) => new(Measure.Pressure, place, condition);
}
