using Emberwright.Stove.Patterns;
using Emberwright.Stove.Patterns.Anatomies;
using Emberwright.Stove.Quantities;
using Emberwright.Visits.Journal;

namespace Emberwright.Cli.Json;

internal sealed record PatternsDocument(IReadOnlyList<JsonPattern> Patterns)
{
    public static PatternsDocument Of(IReadOnlyList<Pattern> patterns, UnitSystem units) => new([.. patterns.Select(p => JsonPattern.Of(p, units))]);
}

internal sealed record JsonPattern(
    string Id, string Name, IReadOnlyList<string> Synonyms, IReadOnlyList<JsonNamed> Ports, string SensePort, double SupplyV,
    IReadOnlyList<string> Parameters, IReadOnlyList<JsonRating> Ratings, IReadOnlyList<JsonPanel> Panels, IReadOnlyList<JsonAshTrap> AshTraps,
    IReadOnlyList<JsonGasket> Gaskets, IReadOnlyList<JsonSensor> Sensors, IReadOnlyList<JsonTypicalPart> Parts, IReadOnlyList<JsonDatum> HowToFind)
{
    public static JsonPattern Of(Pattern p, UnitSystem units) => new(
        p.Id, p.Name, p.Synonyms, [.. p.Ports.Select(x => new JsonNamed(x.Id, x.Name))], p.SensePort, p.SupplyV,
        [.. p.Parameters.Select(b => EnumWords.Of(b.Parameter))],
        [.. p.Ratings.Select(r => JsonRating.Of(r, units))],
        [.. p.Anatomy.Panels.Select(JsonPanel.Of)],
        [.. p.Anatomy.AshTraps.Select(JsonAshTrap.Of)],
        [.. p.Anatomy.Gaskets.Select(JsonGasket.Of)],
        [.. p.Anatomy.Sensors.Select(JsonSensor.Of)],
        [.. TypicalParts.Of(p).Select(t => new JsonTypicalPart(t.Rating.Component, t.Name, t.Rating.PowerW, Rounded(t.Rating.ResistanceOhm), Rounded(t.Rating.CurrentA)))],
        [.. p.Anatomy.HowToFind.Select(d => new JsonDatum(d.Member, d.What, d.Look, d.Measure, d.UntilThen, d.Origin.Source))]);

    private static double? Rounded(double? value) => value is { } number ? Math.Round(number, 3) : null;
}

internal sealed record JsonTypicalPart(string Component, string Name, double? PowerW, double? ResistanceOhm, double? RunningA);

internal sealed record JsonNamed(string Id, string Name);

internal sealed record JsonRating(string Place, string Quantity, string Condition, double Low, double High, string Unit, string Origin)
{
    public static JsonRating Of(Rating r, UnitSystem units)
    {
        var shown = new Shown(r.Observable.Measure, units);
        return new(r.Observable.Place, MeasureUnits.Name(r.Observable.Measure), ConditionText.Format(r.Observable.Condition),
            shown.Number(r.Low), shown.Number(r.High), shown.Symbol, r.Origin.Source);
    }
}

internal sealed record JsonPanel(
    string Id, string Name, string Where, string OpensTo, IReadOnlyList<JsonFastener> Fasteners, string FastenersText, IReadOnlyList<string> Serves,
    IReadOnlyList<string> After, string? Gasket, IReadOnlyList<string> Cautions, string Origin)
{
    public static JsonPanel Of(AccessPanel p) => new(
        p.Id, p.Name, p.Where, p.OpensTo,
        [.. p.Fasteners.Select(f => new JsonFastener(AnatomyWords.Kinds.Of(f.Kind), AnatomyWords.Drives.Of(f.Drive), f.Size, f.Count))],
        p.FastenersText, [.. p.Serves.Select(EnumWords.Of)], p.After, p.Gasket, p.Cautions, p.Origin.Source);
}

internal sealed record JsonFastener(string Kind, string Drive, string Size, int Count);

internal sealed record JsonAshTrap(
    string Id, string Name, string Where, string Area, string Reach, IReadOnlyList<string> Through, bool Hidden, string? Link, string Origin)
{
    public static JsonAshTrap Of(AshTrap t) => new(t.Id, t.Name, t.Where, EnumWords.Of(t.Area), t.Reach, t.Through, t.IsHidden, t.Link, t.Origin.Source);
}

internal sealed record JsonGasket(
    string Id, string Where, string Form, string Material, string Size, string Side, string ReplaceWhen, string? Link, string Origin)
{
    public static JsonGasket Of(Gasket g) => new(
        g.Id, g.Where, AnatomyWords.Forms.Of(g.Form), g.Material, g.Size, AnatomyWords.Sides.Of(g.Side), g.ReplaceWhen, g.Link, g.Origin.Source);
}

internal sealed record JsonSensor(string Component, string Name, string Kind, string Where, string Senses, IReadOnlyList<string> Through, string Origin)
{
    public static JsonSensor Of(SensorPlace s) => new(
        s.Component, s.Name, AnatomyWords.Sensors.Of(s.Kind), s.Where, s.Senses, s.Through, s.Origin.Source);
}

internal sealed record JsonDatum(string Member, string What, string Look, string Measure, string UntilThen, string Origin);
