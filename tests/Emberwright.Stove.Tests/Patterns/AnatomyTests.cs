using Emberwright.Stove.Controls;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Patterns.Anatomies;
using Xunit;

namespace Emberwright.Stove.Tests.Patterns;

/// <summary>What hands meet on each pattern hangs together, covers the work, and differs where the construction does.</summary>
public class AnatomyTests
{
    public static TheoryData<string> Ids() => [.. PatternLibrary.All.Select(p => p.Id)];

    private static Pattern Of(string id) => PatternLibrary.Find(id)!;

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_reference_names_something_there(string id)
    {
        var pattern = Of(id);
        var built = pattern.Anatomy;
        var links = pattern.Air.Links.Select(l => l.Id).ToHashSet();
        var parts = pattern.Wiring.Components.Select(c => c.Id).ToHashSet();

        Assert.All(built.Panels.SelectMany(p => p.After), a => Assert.NotNull(built.Panel(a)));
        Assert.All(built.Panels.Select(p => p.Gasket).OfType<string>(), g => Assert.Contains(built.Gaskets, x => x.Id == g));
        Assert.All(built.AshTraps.SelectMany(t => t.Through), p => Assert.NotNull(built.Panel(p)));
        Assert.All(built.AshTraps.Select(t => t.Link).OfType<string>(), l => Assert.Contains(l, links));
        Assert.All(built.Gaskets.Select(g => g.Link).OfType<string>(), l => Assert.Contains(l, links));
        Assert.All(built.Sensors, s => Assert.Contains(s.Component, parts));
        Assert.All(built.Sensors.SelectMany(s => s.Through), p => Assert.NotNull(built.Panel(p)));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Ids_are_unique_and_nothing_is_left_blank(string id)
    {
        var built = Of(id).Anatomy;

        Assert.Equal(built.Panels.Count, built.Panels.Select(p => p.Id).Distinct().Count());
        Assert.Equal(built.AshTraps.Count, built.AshTraps.Select(p => p.Id).Distinct().Count());
        Assert.Equal(built.Gaskets.Count, built.Gaskets.Select(p => p.Id).Distinct().Count());
        Assert.All(built.Panels, p => Assert.True(p.Name.Length > 0 && p.Where.Length > 0 && p.OpensTo.Length > 0 && p.Serves.Count > 0 && p.Cautions.Count > 0));
        Assert.All(built.Panels.SelectMany(p => p.Fasteners), f => Assert.InRange(f.Count, 1, 24));
        Assert.All(built.Panels.SelectMany(p => p.Fasteners).Where(f => f.Drive is Drive.HexHead or Drive.HexSocket), f => Assert.NotEmpty(f.Size));
        Assert.All(built.Gaskets, g => Assert.True(g.Where.Length > 0 && g.Material.Length > 0 && g.ReplaceWhen.Length > 0));
        Assert.All(built.HowToFind, d => Assert.True(d.Look.Length > 0 && d.UntilThen.Length > 0));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_service_area_of_the_stove_can_be_reached_and_names_where_its_ash_hides(string id)
    {
        var pattern = Of(id);
        var built = pattern.Anatomy;
        Area[] areas = pattern.Heat.StreamIsWater
            ? [Area.CombustionBlower, Area.AshPassages, Area.Vent, Area.Water]
            : [Area.CombustionBlower, Area.RoomAirBlower, Area.AshPassages, Area.Vent];

        Assert.All(areas, a => Assert.NotEmpty(built.PanelsFor(a)));
        Assert.All(areas.Where(a => a != Area.Water), a => Assert.NotEmpty(built.AshTrapsOf(a)));
        Assert.Contains(built.AshTraps, t => t.IsHidden && t.Area == Area.AshPassages);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Joints_after_the_blower_seal_pressure_and_those_before_it_suction(string id)
    {
        foreach (var gasket in Of(id).Anatomy.Gaskets.Where(g => g.Link is not null))
        {
            var expected = gasket.Link is "blower-gasket" or "vent-joints" ? SealingSide.Pressure : SealingSide.Suction;
            Assert.Equal(expected, gasket.Side);
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_switch_and_probe_of_the_wiring_has_its_place(string id)
    {
        var pattern = Of(id);
        var placed = pattern.Anatomy.Sensors.Select(s => s.Component).ToHashSet();
        var wired = pattern.Wiring.Components.Where(c =>
            (c is Interlock && c.Id != ComponentIds.Thermostat) || c is ResistanceProbe or Thermocouple or PressureSensor || c.Id == ComponentIds.SpeedSensor);

        Assert.All(wired, c => Assert.Contains(c.Id, placed));
    }

    [Fact]
    public void No_two_patterns_have_the_same_panels() =>
        Assert.Equal(PatternLibrary.All.Count, PatternLibrary.All
            .Select(p => string.Join("|", p.Anatomy.Panels.Select(x => x.Where + x.FastenersText))).Distinct().Count());

    [Theory]
    [MemberData(nameof(Ids))]
    public void Each_member_of_a_card_has_a_way_to_find_it(string id)
    {
        string[] members = ["name", "healthy", "vacuumSwitch.sensePort", "vacuumSwitch.closes", "vacuumSwitch.opens", "parts", "ventLimits", "codes", "access", "gaskets", "documents"];

        Assert.All(members, m => Assert.Contains(Of(id).Anatomy.HowToFind, d => d.Member == m));
    }

    [Fact]
    public void A_card_corrects_one_panel_and_one_gasket_and_leaves_the_rest()
    {
        const string text = """
            {"pattern":"damper-insert",
             "access":[{"panel":"ash-covers","area":"ash-passages","where":"high at the sides","fastening":[{"kind":"nut","drive":"hex-head","size":"8 mm","count":2}]},
                       {"area":"vent","where":"left of the hearth","fasteners":"two clips"}],
             "gaskets":[{"seat":"door-rope","size":"12 mm"},{"seat":"hatch","where":"hearth hatch","material":"silicone","side":"pressure"}]}
            """;
        var card = CardFile.Read(text, out var problems)!;
        Assert.Empty(problems);
        var built = CardedAnatomy.Of(DamperInsert.Pattern, card);
        var usual = DamperInsert.Pattern.Anatomy;

        Assert.Equal("high at the sides", built.Panel("ash-covers")!.Where);
        Assert.Equal("2 nuts, hex head 8 mm", built.Panel("ash-covers")!.FastenersText);
        Assert.Equal(usual.Panel("ash-covers")!.Cautions, built.Panel("ash-covers")!.Cautions);
        Assert.Equal("two clips", built.Panels[^1].FastenersText);
        Assert.Equal(usual.Panels.Count + 1, built.Panels.Count);
        Assert.Equal("12 mm", built.Gaskets.Single(g => g.Id == "door-rope").Size);
        Assert.Equal(SealingSide.Pressure, built.Gaskets.Single(g => g.Id == "hatch").Side);
        Assert.Same(usual, CardedAnatomy.Of(DamperInsert.Pattern, null));
    }

    [Fact]
    public void Fasteners_are_said_as_the_trade_says_them() =>
        Assert.Equal("4 screws, hex head 5/16 in", new Fastener(FastenerKind.Screw, Drive.HexHead, "5/16 in", 4, Origin.Typical).Words);
}
