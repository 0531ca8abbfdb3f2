using System.Text.Json;
using Emberwright.Stove.Patterns.Anatomies;
using Emberwright.Stove.Quantities;

namespace Emberwright.Stove.Patterns;

/// <summary>Walks a card's JSON and collects what is wrong with it.</summary>
internal sealed class CardReader
{
    private static readonly string[] DocumentKinds = ["manual", "diagram", "bulletin", "recall", "other"];
    private readonly JsonProblems problems = new();

    public IReadOnlyList<FileProblem> Problems => problems.Found;

    public StoveCard? Card(JsonElement root)
    {
        var at = new JsonPlace(root, "$", problems);
        if (!at.IsObject())
        {
            return null;
        }

        if (at.Text("format") is { } format && format != CardFile.Format)
        {
            Report("$.format", $"\"{format}\" is not a stove card", $"A card has \"format\": \"{CardFile.Format}\".");
        }

        if (at.Count("version") is { } version && version > CardFile.Version)
        {
            Report("$.version", $"version {version} is newer than this program knows ({CardFile.Version})", "Update the program.");
        }

        var pattern = PatternOf(at);
        var vacuum = at.Member("vacuumSwitch");
        var card = new StoveCard
        {
            Pattern = pattern?.Id ?? "",
            Name = at.Text("name") ?? "",
            HealthySite = at.Member("healthySite") is { } site ? SiteOf(site) : null,
            Healthy = [.. at.Items("healthy").Select(i => Healthy(i, pattern)).OfType<HealthyValue>()],
            SensePort = vacuum is { } v && v.Text("sensePort") is { } port ? PortOf(v, port, pattern) : null,
            SwitchClosesPa = Vacuum(vacuum, "closes"),
            SwitchOpensPa = Vacuum(vacuum, "opens"),
            Parts = [.. at.Items("parts").Select(i => CardElectric.Part(i, pattern))],
            Wiring = at.Member("wiring") is { } wiring ? CardElectric.Wiring(wiring, pattern) : null,
            Parameters = [.. at.Items("parameters").Select(CardElectric.Parameter)],
            VentLimits = at.Member("ventLimits") is { } limits
                ? new VentLimits(
                    limits.Quantity("longestEquivalent", Dimension.Length),
                    limits.Quantity("longestHorizontal", Dimension.Length),
                    limits.Quantity("leastRise", Dimension.Length))
                : null,
            Codes = [.. at.Items("codes").Select(CardElectric.Code)],
            Access = [.. at.Items("access").Select(i => Panel(i, pattern))],
            Gaskets = [.. at.Items("gaskets").Select(GasketOf)],
            Documents = [.. at.Items("documents").Select(Document)],
        };
        if (card.SwitchClosesPa is { } closes && card.SwitchOpensPa is { } opens && opens >= closes)
        {
            Report("$.vacuumSwitch.opens", "a switch opens at a weaker vacuum than it closes at", "Check the two pressures; they may be swapped.");
        }

        CardElectric.Prove(card, pattern, problems);
        return card;
    }

    private void Report(string path, string message, string remedy) => problems.Report(path, message, remedy);

    private Pattern? PatternOf(JsonPlace at)
    {
        var words = at.Needed("pattern");
        if (words.Length == 0)
        {
            return null;
        }

        var pattern = PatternLibrary.Find(words);
        if (pattern is null)
        {
            Report("$.pattern", $"\"{words}\" is not known", $"Use one of {string.Join(", ", PatternLibrary.All.Select(p => p.Id))}.");
        }

        return pattern;
    }

    private HealthyValue? Healthy(JsonPlace at, Pattern? pattern)
    {
        var words = at.Needed("measure");
        var measure = MeasureUnits.ByName(words);
        if (measure is null && words.Length > 0)
        {
            Report(at.Path + ".measure", $"\"{words}\" is not known", $"Use one of {MeasureUnits.Names}.");
        }

        var place = at.Needed("place");
        if (measure == Measure.Pressure && place.Length > 0)
        {
            PortOf(at, place, pattern, "place");
        }

        var condition = ConditionText.Parse(at.Needed("condition"));
        if (condition is null)
        {
            Report(at.Path + ".condition", "not understood", ConditionText.Remedy);
        }

        if (measure is null || condition is null)
        {
            return null;
        }

        return at.Reading("value", measure.Value) is { } value
            ? new HealthyValue(new Observable(measure.Value, place, condition.Value), value)
            : null;
    }

    private string PortOf(JsonPlace at, string port, Pattern? pattern, string member = "sensePort")
    {
        if (pattern is not null && pattern.Ports.All(p => p.Id != port))
        {
            Report($"{at.Path}.{member}", $"\"{port}\" is not a port of {pattern.Id}", $"Use one of {string.Join(", ", pattern.Ports.Select(p => p.Id))}.");
        }

        return port;
    }

    private double? Vacuum(JsonPlace? at, string member)
    {
        // A switch's rating is written with either sign; it always means vacuum.
        var pa = at?.Quantity(member, Dimension.Pressure);
        if (pa is { } value && Math.Abs(value) is < 1 or > 500)
        {
            Report($"{at!.Value.Path}.{member}", $"{value:G4} Pa is outside 1 to 500 Pa", "Give the pressure on the switch's label.");
        }

        return pa is { } signed ? Math.Abs(signed) : null;
    }

    private static Site SiteOf(JsonPlace at) => new(
        at.Quantity("altitude", Dimension.Length) ?? 0,
        at.Quantity("outdoor", Dimension.Temperature),
        at.Quantity("room", Dimension.Temperature),
        at.Quantity("wind", Dimension.Velocity),
        at.Quantity("housePressure", Dimension.Pressure),
        at.Member("vent") is { } vent ? Run(vent) : null,
        at.Flag("outsideAir"));

    private static VentRun Run(JsonPlace at) => new(
        1000 * (at.Quantity("diameter", Dimension.Length) ?? 0.076),
        at.Quantity("horizontal", Dimension.Length) ?? 0,
        at.Quantity("vertical", Dimension.Length) ?? 0,
        at.Count("elbows90") ?? 0,
        at.Count("elbows45") ?? 0,
        at.Count("tees") ?? 0,
        at.OneOf("terminal", ["vertical-cap", "horizontal-hood", "open"]) ?? "vertical-cap",
        at.OneOf("lining", ["rigid", "flexible", "masonry"]) ?? "rigid",
        at.Flag("insulated"));

    private CardAccess Panel(JsonPlace at, Pattern? pattern)
    {
        var words = at.Needed("area");
        if (!AreaNames.TryParse(words, out var area) && words.Length > 0)
        {
            Report(at.Path + ".area", $"\"{words}\" is not known", $"Use one of {AreaNames.All}.");
        }

        var panel = at.Text("panel") ?? "";
        if (panel.Length > 0 && pattern is not null && pattern.Anatomy.Panel(panel) is null)
        {
            Report(at.Path + ".panel", $"\"{panel}\" is not a panel of {pattern.Id}",
                $"Use one of {string.Join(", ", pattern.Anatomy.Panels.Select(p => p.Id))}, or leave it out for a panel of its own.");
        }

        return new CardAccess(area, at.Needed("where"), at.Text("fasteners") ?? "", at.Text("gasket") ?? "")
        {
            Panel = panel,
            Fastening = [.. at.Items("fastening").Select(FastenerOf)],
        };
    }

    private Fastener FastenerOf(JsonPlace at)
    {
        var count = at.Count("count") ?? 1;
        if (count is < 1 or > 24)
        {
            Report(at.Path + ".count", $"{count} is outside 1 to 24", "Count those of one panel.");
        }

        return new Fastener(
            AnatomyWords.Kinds.Parse(at.OneOf("kind", AnatomyWords.Kinds.Names)) ?? FastenerKind.Screw,
            AnatomyWords.Drives.Parse(at.OneOf("drive", AnatomyWords.Drives.Names)) ?? Drive.Hand,
            at.Text("size") ?? "", count, Origin.OnCard);
    }

    private static CardGasket GasketOf(JsonPlace at) => new(
        at.Needed("seat"), at.Text("where") ?? "", at.Text("material") ?? "", at.Text("size") ?? "",
        AnatomyWords.Sides.Parse(at.OneOf("side", AnatomyWords.Sides.Names)));

    private static CardDocument Document(JsonPlace at) =>
        new(at.OneOf("kind", DocumentKinds) ?? "other", at.Needed("title"), at.Needed("file"));
}
