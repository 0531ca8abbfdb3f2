using System.Globalization;
using System.Xml.Linq;
using CsCheck;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Pictures.Profile;
using Xunit;

namespace Emberwright.Reports.Tests;

public class ProfileTests
{
    private static readonly Gen<ProfileStation> Station =
        from id in Gen.Int[0, 1_000_000]
        from mid in Gen.Double[-140, 60]
        from half in Gen.Double[0.5, 20]
        from reading in Gen.Double[-300, 300]
        from read in Gen.Bool
        from last in Gen.Bool
        from name in Gen.Int[0, 4].Select(i => new[] { "firebox", "blower inlet", "collar", "secondary exchanger outlet", "ash chamber" }[i])
        select new ProfileStation($"p{id}", name, new(mid - half, mid, mid + half)) { ReadingPa = read ? reading : null, LastPa = last ? mid : null };

    private static readonly Gen<ProfileInput> Input =
        from stations in Station.Array[1, 6]
        from unit in Gen.Bool.Select(us => us ? PressureUnit.InchOfWater : PressureUnit.Pascal)
        from threshold in Gen.Bool
        from outdoors in Gen.Double[-10, 10]
        select new ProfileInput
        {
            Title = "any",
            Stations = [.. stations],
            Parts = [.. Enumerable.Range(0, stations.Length + 1).Select(i => i % 2 == 0 ? "ash passages" : "combustion blower, housing")],
            Unit = unit,
            Outdoors = new(outdoors - 1, outdoors, outdoors + 1),
            Thresholds = threshold ? [new(stations[0].Id, -10, "vacuum switch")] : [],
        };

    [Fact]
    public void Each_row_of_the_ledger_sums_to_outdoors_minus_room() => Input.Sample(input =>
    {
        var ledger = Ledger.From(input);
        var outdoors = input.Unit.Round(input.Outdoors.MidPa);
        Assert.Equal(outdoors, ledger.Healthy.Sum(), 9);
        if (input.Stations.Any(s => s.ReadingPa is not null)) Assert.Equal(outdoors, ledger.Entries.Sum(e => e.Found!.Value), 9);
    });

    [Fact]
    public void Nothing_is_cut_whatever_the_readings() => Input.Sample(input =>
    {
        var scene = PressureProfile.Draw(input);
        foreach (var box in Boxes(SvgWriter.Inline(scene)))
        {
            Assert.True(box.X >= scene.View.X - 0.5 && box.Right <= scene.View.Right + 0.5, $"{box} stands out of {scene.View} sideways.");
            Assert.True(box.Y >= scene.View.Y - 0.5 && box.Bottom <= scene.View.Bottom + 0.5, $"{box} stands out of {scene.View}.");
        }
    }, iter: 200);

    [Fact]
    public void Tags_do_not_touch_each_other() => Input.Where(i => i.Stations.Select(s => s.Id).Distinct().Count() == i.Stations.Length).Sample(input =>
    {
        var tags = XDocument.Parse(SvgWriter.Inline(PressureProfile.Draw(input))).Descendants()
            .Where(e => (string?)e.Attribute("class") == "tag").Select(BoxOf).ToList();
        for (var i = 0; i < tags.Count; i++)
            for (var k = i + 1; k < tags.Count; k++)
                Assert.True(tags[i].Overlap(tags[k]) < 1, $"{tags[i]} and {tags[k]} touch.");
    }, iter: 200);

    [Fact]
    public void A_reading_outside_is_told_by_shape_plumb_line_tag_and_word()
    {
        var svg = XDocument.Parse(SvgWriter.Inline(PressureProfile.Draw(Samples.Choked)));
        var firebox = svg.Descendants().Single(e => (string?)e.Attribute("data-tap") == "firebox");
        string[] classes = [.. firebox.Elements().Select(e => (string?)e.Attribute("class")).OfType<string>()];
        Assert.Contains("out", classes);
        Assert.Contains("plumb", classes);
        Assert.Contains("tag", classes);
        Assert.Contains(firebox.Elements(), e => e.Value == "too weak");
        Assert.Contains(firebox.Elements(), e => e.Value == "−7 Pa");
    }

    [Fact]
    public void A_reading_inside_needs_no_tag()
    {
        var svg = XDocument.Parse(SvgWriter.Inline(PressureProfile.Draw(Samples.Cleaned)));
        Assert.DoesNotContain(svg.Descendants(), e => (string?)e.Attribute("class") is "tag" or "out" or "plumb");
    }

    [Fact]
    public void The_plumb_line_is_as_long_as_the_error()
    {
        var svg = XDocument.Parse(SvgWriter.Inline(PressureProfile.Draw(Samples.Choked)));
        double Length(string port)
        {
            var d = (string)svg.Descendants().Single(e => (string?)e.Attribute("data-tap") == port).Elements().Single(e => (string?)e.Attribute("class") == "plumb").Attribute("d")!;
            var p = d[1..].Split('L').Select(s => double.Parse(s.Split(' ')[1], CultureInfo.InvariantCulture)).ToArray();
            return p[1] - p[0];
        }

        // Errors by hand: firebox −7 against −18 is 11 Pa up, blower inlet −79 against −72 is 7 Pa down.
        Assert.Equal(-11.0 / 7.0, Length("firebox") / Length("blower-inlet"), 2);
    }

    [Theory]
    [InlineData(-32, -72, 1, "inlet, pot")]
    [InlineData(-13, -44, 39, "vent")]
    [InlineData(-19, -58, 1, "blower")]
    [InlineData(-7, -79, -5, "ash passages")]
    [InlineData(-12, -60, 1, "inlet, pot")]
    public void The_odd_entry_names_the_part(double firebox, double inlet, double collar, string part)
    {
        // Invented readings in which one part takes an unusual share of the pressure.
        var input = Samples.Choked with
        {
            Stations =
            [
                new("firebox", "firebox", new(-24, -22, -20)) { ReadingPa = firebox },
                new("blower-inlet", "blower inlet", new(-69, -66, -63)) { ReadingPa = inlet },
                new("collar", "collar", new(-1, 1, 3)) { ReadingPa = collar },
            ],
        };
        var ledger = Ledger.From(input);
        Assert.Equal(part, ledger.Entries[ledger.Odd!.Value].Name);
    }

    [Fact]
    public void A_port_that_was_not_read_joins_its_two_parts()
    {
        var ledger = Ledger.From(Samples.NestInCap);
        var joined = Assert.Single(ledger.Entries, e => e.Last > e.First);
        Assert.Equal("exchanger and ash passages", joined.Name);
        Assert.Equal(-31, joined.Found);
    }

    [Fact]
    public void The_description_holds_every_figure()
    {
        var said = PressureProfile.Draw(Samples.Choked).Description;
        foreach (var figure in new[] { "−7 Pa", "−79 Pa", "−5 Pa", "−26 to −18 Pa", "−72 to −60 Pa", "−2 to +4 Pa", "too weak", "too strong", "−72", "−44", "opens at −10 Pa", "last visit, as left −21 Pa" })
            Assert.Contains(figure, said);
    }

    [Fact]
    public void A_wrong_input_is_named_with_its_remedy()
    {
        Assert.Contains("Parts has 3", Assert.Throws<ArgumentException>(() => PressureProfile.Draw(Samples.Choked with { Parts = ["a", "b", "c"] })).Message);
        Assert.Contains("'firebox'", Assert.Throws<ArgumentException>(() => PressureProfile.Draw(Samples.Choked with { Stations = [Samples.Choked.Stations[0] with { ReadingPa = double.NaN }], Parts = ["a", "b"], Thresholds = [] })).Message);
        Assert.Contains("at least one port", Assert.Throws<ArgumentException>(() => PressureProfile.Draw(Samples.Choked with { Stations = [], Parts = ["a"] })).Message);
    }

    private static IEnumerable<Box> Boxes(string svg) => XDocument.Parse(svg).Descendants().Where(e => e.Name.LocalName is "text" or "rect" && (string?)e.Attribute("class") != "hit").Select(e =>
    {
        if (e.Name.LocalName == "rect") return BoxOf(e);
        var size = N(e, "font-size");
        var width = new Lettering(size, (string?)e.Attribute("font-weight") == "600").Width(e.Value);
        var x = N(e, "x") - (string?)e.Attribute("text-anchor") switch { "middle" => width / 2, "end" => width, _ => 0 };
        var group = e.Parent?.Attribute("transform") is not null;
        return group ? default : new Box(x, N(e, "y") - size * 0.75, width, size * 0.75);
    }).Where(b => b != default);

    private static Box BoxOf(XElement e)
    {
        double dx = 0, dy = 0;
        if ((string?)e.Parent?.Attribute("transform") is { } t)
        {
            var parts = t["translate(".Length..^1].Split(' ');
            (dx, dy) = (double.Parse(parts[0], CultureInfo.InvariantCulture), double.Parse(parts[1], CultureInfo.InvariantCulture));
        }

        return new Box(N(e, "x") + dx, N(e, "y") + dy, N(e, "width"), N(e, "height"));
    }

    private static double N(XElement e, string name) => double.Parse((string)e.Attribute(name)!, CultureInfo.InvariantCulture);
}
