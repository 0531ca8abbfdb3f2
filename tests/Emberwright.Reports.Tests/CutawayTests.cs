using Emberwright.Reports.Pictures;
using Emberwright.Reports.Pictures.Cutaway;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Reports.Tests;

/// <summary>The sections show what the pattern says of itself, and each pattern differs where its construction does.</summary>
public class CutawayTests
{
    public static TheoryData<string> Patterns => [.. PatternLibrary.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Every_port_is_drawn_named_and_can_be_tapped(string id)
    {
        var pattern = PatternLibrary.Find(id)!;
        var svg = SvgWriter.Inline(CutawayPicture.Draw(pattern));
        foreach (var port in pattern.Ports)
        {
            Assert.Contains($"data-tap=\"{port.Id}\"", svg);
            Assert.Contains(port.Name, Scene(id).Description);
        }
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void What_the_construction_has_is_named_and_what_it_lacks_is_not(string id)
    {
        var pattern = PatternLibrary.Find(id)!;
        var said = Scene(id).Description;
        Assert.Equal(pattern.Air.Links.Any(l => l.Id == "airwash"), said.Contains("airwash"));
        Assert.Equal(pattern.Air.Links.Any(l => l.Id == "ash-door"), said.Contains("ash door"));
        Assert.Equal(pattern.Heat.StreamIsWater, said.Contains("water jacket") && said.Contains("circulating pump"));
        Assert.Equal(!pattern.Heat.StreamIsWater, said.Contains("room-air blower"));
        Assert.Equal(pattern.IsSealed, said.Contains("outdoors"));
        Assert.Equal(pattern.Wiring.HasComponent(ComponentIds.AgitatorMotor), said.Contains("agitator"));
        Assert.Equal(pattern.Wiring.HasComponent(ComponentIds.Thermocouple), said.Contains("thermocouple"));
        Assert.Equal(pattern.Wiring.HasComponent(ComponentIds.ExhaustProbe), said.Contains("exhaust probe"));
        Assert.Equal(pattern.Wiring.HasComponent(ComponentIds.ProofDisc), said.Contains("proof-of-fire disc"));
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Every_panel_has_its_place_in_the_section(string id)
    {
        var svg = SvgWriter.Inline(CutawayPicture.Draw(PatternLibrary.Find(id)!));
        foreach (var panel in PatternLibrary.Find(id)!.Anatomy.Panels) Assert.Contains($"id=\"cutaway-panel-{panel.Id}\"", svg);
    }

    [Fact]
    public void No_two_patterns_look_alike() =>
        Assert.Equal(PatternLibrary.All.Count, PatternLibrary.All.Select(p => SvgWriter.Inline(CutawayPicture.Look(p, "look"))).Select(Body).Distinct().Count());

    [Theory]
    [MemberData(nameof(Patterns))]
    public void No_two_words_beside_the_section_touch(string id)
    {
        var texts = Scene(id).Shapes.SelectMany(Texts).Where(t => t.Lettering.Size >= 12).ToArray();
        for (var i = 0; i < texts.Length; i++)
            for (var k = i + 1; k < texts.Length; k++)
                Assert.True(Extent(texts[i]).Overlap(Extent(texts[k])) < 1, $"'{texts[i].Words}' lies on '{texts[k].Words}'.");
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Nothing_reaches_beyond_the_picture(string id)
    {
        var scene = Scene(id);
        foreach (var text in scene.Shapes.SelectMany(Texts))
        {
            var box = Extent(text);
            Assert.True(box.X >= scene.View.X && box.Right <= scene.View.Right && box.Y >= scene.View.Y && box.Bottom <= scene.View.Bottom, $"'{text.Words}' is cut.");
        }
    }

    private static Scene Scene(string id) => CutawayPicture.Draw(PatternLibrary.Find(id)!);

    private static string Body(string svg) => svg[svg.IndexOf("</desc>", StringComparison.Ordinal)..];

    private static Box Extent(Text t) => new(t.Left, t.At.Y - t.Lettering.Size * 0.72, t.Lettering.Width(t.Words), t.Lettering.Size * 0.9);

    private static IEnumerable<Text> Texts(Shape shape) => shape switch
    {
        Text t => [t],
        Group g => g.Shapes.SelectMany(Texts).Select(t => t with { At = new(t.At.X + g.Dx, t.At.Y + g.Dy) }),
        _ => [],
    };
}
