using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>Whatever can hurt at a remedy is said there: judged by what the remedy touches, not by what it says of itself (common practice, no source).</summary>
public class CautionTests
{
    private static readonly string[] Low =
    [
        ComponentIds.Thermostat, ComponentIds.ThermostatCable, ComponentIds.Thermocouple, ComponentIds.ExhaustProbe, ComponentIds.RoomProbe,
        ComponentIds.WaterProbe, ComponentIds.PressureSensor, ComponentIds.SpeedSensor,
    ];

    [Fact]
    public void Every_remedy_has_a_caution() =>
        Assert.Empty(FaultList.All.Where(f => f.Remedy.Cautions.Count == 0).Select(f => f.Id));

    [Fact]
    public void Work_on_a_mains_part_is_done_dead_or_says_that_it_is_live() => Missing(
        f => f.Circuit.Any(c => !Low.Contains(c.Component)) && f.Remedy.Kind is not (RemedyKind.Advise or RemedyKind.Reset),
        Cautions.MakeSafe, Cautions.Live);

    [Fact]
    public void A_replaced_part_is_replaced_with_the_fire_out_and_the_plug_out() => Missing(
        f => f.Remedy.Kind == RemedyKind.Replace && f.Area != Area.Site, Cautions.MakeSafe);

    [Fact]
    public void Exhaust_that_can_reach_the_room_is_measured_there() => Missing(
        f => f.SafetyStop is "spillage" or "reversed-draft" or "cracked-exchanger" or "pressure-side-leak" or "cleanout-cap-off"
            || f.Shifts.Any(s => s.Parameter is Parameter.BlowerGasketLeak or Parameter.VentLeak), Cautions.Monoxide);

    [Fact]
    public void The_roof_has_its_ladder() => Missing(f => Says(f, "cap and", "terminal", "snow", "sweep the vent", "nest"), Cautions.Ladder);

    [Fact]
    public void Old_fibre_is_named_where_gaskets_are_parted() => Missing(f => Says(f, "new rope", "door rope", "new gasket", "baffle", "covers of the ash", "bed the glass"), Cautions.Fibre);

    [Fact]
    public void Fingers_stay_out_of_the_auger() => Missing(f => f.Area == Area.Feed && Says(f, "auger", "hopper", "gearbox", "feed motor:"), Cautions.Auger);

    [Fact]
    public void Ash_is_live() => Missing(f => Says(f, "vacuum and brush", "scrape", "empty and brush", "empty what fell"), Cautions.Ash);

    [Fact]
    public void Hot_water_is_let_cool() => Missing(f => f.Area == Area.Water, Cautions.Water);

    [Fact]
    public void A_capacitor_is_discharged() => Missing(f => f.Circuit.Any(c => c.Component == ComponentIds.RunCapacitor), Cautions.Discharge);

    [Fact]
    public void A_safety_contact_is_never_bridged() => Missing(
        f => f.Circuit.Any(c => WiringLibrary.All.Any(w => w.FeedChain.Contains(c.Component))), Cautions.NoBridge);

    private static bool Says(Fault fault, params string[] words) => words.Any(w => fault.Remedy.Words.Contains(w, StringComparison.OrdinalIgnoreCase));

    private static void Missing(Func<Fault, bool> concerns, params string[] cautions)
    {
        var concerned = FaultList.All.Where(concerns).ToList();
        Assert.NotEmpty(concerned);
        Assert.Empty(concerned.Where(f => !f.Remedy.Cautions.Any(cautions.Contains)).Select(f => $"{f.Id}: {f.Remedy.Words}"));
    }
}
