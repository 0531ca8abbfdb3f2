using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>A card's electrical figures are used by circuit and sequence, and refused with their place when no part can have them (Ohm's law).</summary>
public class CardCircuitTests
{
    private static Pattern Damper => PatternLibrary.All.Single(p => p.Id == "damper-insert");

    private static StoveCard Card(string members) =>
        CardFile.Read($$"""{"pattern":"damper-insert",{{members}}}""", out var problems) ?? throw new InvalidOperationException(string.Join("; ", problems));

    [Fact]
    public void An_igniter_of_400_W_on_the_card_draws_400_W()
    {
        var wiring = CardCircuit.Of(Damper, Card("""  "parts":[{"component":"igniter","power":"400 W"}]  """));
        var solved = SolvedWiring.Alternating(wiring, wiring.In(Operation.Igniting), []);
        Assert.Equal(400.0 / 120, solved.CurrentA(ComponentIds.Igniter), 0.08); // the socket's own resistance costs a little
    }

    [Fact]
    public void At_230_V_50_Hz_every_load_draws_the_same_power()
    {
        var wiring = CardCircuit.Of(Damper, Card("""  "wiring":{"supply":"230 V","frequencyHz":50}  """));
        Assert.Equal((230, 50), (wiring.Mains.NominalV, wiring.Mains.FrequencyHz));
        var igniter = (Igniter)wiring[ComponentIds.Igniter];
        Assert.Equal(230.0 * 230 / 300, igniter.HotOhm, 0.1);
        var (here, there) = ((Motor)wiring[ComponentIds.FeedMotor], (Motor)Damper.Wiring[ComponentIds.FeedMotor]);
        Assert.Equal(there.RatedV * there.RunningA, here.RatedV * here.RunningA, 1e-9);
        Assert.InRange(SolvedWiring.Alternating(wiring, wiring.In(Operation.High), []).OpenVoltageV(wiring.PointIndex("tp5"), 0).Magnitude, 225, 230);
    }

    [Fact]
    public void The_cards_order_is_the_order_of_the_current()
    {
        var wiring = CardCircuit.Of(Damper, Card("""  "wiring":{"feedOrder":["vacuum-switch","high-limit-disc","lid-switch","proof-disc"]}  """));
        Assert.Equal("vacuum-switch", LoadPath.To(wiring, ComponentIds.FeedMotor).Parts.OfType<Interlock>().First().Id);
    }

    [Fact]
    public void A_disc_of_60_degrees_proves_the_fire_later_and_one_with_a_button_stays_open()
    {
        var early = Proved(null);
        var late = Proved(Card("""  "wiring":{"contacts":[{"component":"proof-disc","acts":"60 °C","releases":"49 °C"}]}  """));
        Assert.True(late > early, $"{late} s is not after {early} s");
        var manual = CardCircuit.Of(Damper, Card("""  "wiring":{"contacts":[{"component":"high-limit-disc","reset":"automatic"}]}  """));
        Assert.Equal(ResetKind.Automatic, ((Interlock)manual[ComponentIds.HighLimitDisc]).Reset);
    }

    [Fact]
    public void The_sequence_shows_the_cards_code()
    {
        var program = CardProgram.Of(Damper, Card("""  "codes":[{"code":"4 blinks","meaning":"fire lost","alarm":"no-fire"}]  """));
        Assert.Equal("4 blinks", program.Codes.Single(c => c.Id == Alarms.NoFire).Shown);
    }

    [Theory]
    [InlineData("""  "parts":[{"component":"igniter","power":"9000 W"}]  """, "$.parts[0].power", "1500")]
    [InlineData("""  "parts":[{"component":"toaster","power":"300 W"}]  """, "$.parts[0].component", "igniter")]
    [InlineData("""  "parts":[{"component":"igniter","power":"300 W","resistance":"100 ohm"}]  """, "$.wiring", "Ω")]
    [InlineData("""  "parts":[{"component":"feed-motor","current":"1 A","resistance":"400 ohm"}]  """, "$.wiring", "feed-motor")]
    [InlineData("""  "wiring":{"supply":"24 V"}  """, "$.wiring.supply", "100")]
    [InlineData("""  "wiring":{"frequencyHz":55}  """, "$.wiring.frequencyHz", "50 or 60")]
    [InlineData("""  "wiring":{"feedOrder":["vacuum-switch"]}  """, "$.wiring", "high-limit-disc")]
    [InlineData("""  "wiring":{"contacts":[{"component":"fuse"}]}  """, "$.wiring.contacts[0].component", "vacuum-switch")]
    [InlineData("""  "wiring":{"contacts":[{"component":"high-limit-disc","contact":"normally-open"}]}  """, "$.wiring.contacts[0].contact", "normally-closed")]
    [InlineData("""  "wiring":{"contacts":[{"component":"proof-disc","acts":"49 °C","releases":"55 °C"}]}  """, "$.wiring.contacts[0].releases", "49")]
    [InlineData("""  "wiring":{"contacts":[{"component":"vacuum-switch","acts":"49 °C"}]}  """, "$.wiring.contacts[0].acts", "temperature")]
    [InlineData("""  "codes":[{"code":"E1","meaning":"x","alarm":"boom"}]  """, "$.codes[0].alarm", "no-fire")]
    [InlineData("""  "parameters":[{"parameter":"P1","value":"3","changes":"feed","percentPerStep":0}]  """, "$.parameters[0].percentPerStep", "50")]
    public void A_figure_no_part_can_have_is_named_with_its_place(string members, string path, string says)
    {
        Assert.Null(CardFile.Read($$"""{"pattern":"damper-insert",{{members}}}""", out var problems));
        var problem = Assert.Single(problems);
        Assert.Equal(path, problem.Path);
        Assert.Contains(says, problem.Message + problem.Remedy, StringComparison.Ordinal);
    }

    private static double Proved(StoveCard? card)
    {
        var run = BurnForecast.Run(new VirtualStove(Damper, card, new Site()), new double[Enum.GetValues<Parameter>().Length], new BurnScenario(), 7200);
        // The disc is bridged until the board looks at it; its own position shows when it closed.
        var disc = Damper.Wiring.ComponentIndex(ComponentIds.ProofDisc);
        return run.Samples.First(s => !s.Positions.IsOpen(disc)).TimeS;
    }
}
