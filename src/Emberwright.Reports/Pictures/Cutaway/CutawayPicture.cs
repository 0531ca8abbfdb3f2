using System.Collections.Immutable;
using Emberwright.Reports.Wording;
using Emberwright.Stove.Patterns;

namespace Emberwright.Reports.Pictures.Cutaway;

/// <summary>
/// A section through a stove of one pattern, front on the left: where fuel, air, gas and heat go, where ash rests, what
/// watches it, and where a gauge joins. Composed from the pattern's construction, air path, ports and wiring.
/// Question it answers: where is it on this stove?
/// </summary>
public static class CutawayPicture
{
    private const double Width = 374;
    private const double LeftEdge = 59;
    private const double RightEdge = 308;

    /// <summary>Draws the section.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="id">Prefix of ids, unique on its page.</param>
    /// <param name="key">False leaves out the key, where words beside the picture hold it.</param>
    public static Scene Draw(Pattern pattern, string id = "cutaway", bool key = true)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        var frame = CutawayFrame.For(pattern.Form);
        var on = Compose(pattern, frame);
        double top = Math.Min(frame.Body.Y - 30, frame.IsTopOutlet ? -14 : 0), bottom = frame.Body.Bottom + 14;
        var names = NamesBeside.Draw(on.Names, LeftEdge, RightEdge, Width, ref top, ref bottom);
        var y = bottom + 8;
        var under = key ? CutawayKey.Draw(Rows(pattern, frame, on.Sensors), Width, ref y) : [];
        return new Scene(id, Box.Between(-2, top - 4, Width + 2, y), Say.Of("section.section-through-a", Say.Term(pattern.Name)), Describe(pattern, frame, on),
            [.. on.Shapes.TakeWhile(s => s is not Group), .. names, .. on.Shapes.SkipWhile(s => s is not Group), .. under]);
    }

    /// <summary>The stove alone, small: to tell patterns apart by their look.</summary>
    public static Scene Look(Pattern pattern, string id)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        var frame = CutawayFrame.For(pattern.Form);
        var on = new Draught();
        Parts(on, pattern, frame);
        return new Scene(id, Box.Between(60, -12, 320, 364), Say.Of("section.section-through-a", Say.Term(pattern.Name)), Say.Of("section.front-on-the-left"), on.Shapes);
    }

    /// <summary>What the signs mean beside their names, without what opens, for words beside the picture.</summary>
    internal static IReadOnlyList<CutawayKey.Row> Key(Pattern pattern)
    {
        var frame = CutawayFrame.For(pattern.Form);
        return Rows(pattern, frame, Compose(pattern, frame).Sensors, panels: false);
    }

    private static Draught Compose(Pattern pattern, CutawayFrame frame)
    {
        var on = new Draught();
        Parts(on, pattern, frame);
        PanelMarks.Draw(on, frame, pattern);
        PortMarks.Sensors(on);
        PortMarks.Draw(on, frame, pattern);
        return on;
    }

    private static void Parts(Draught on, Pattern pattern, CutawayFrame frame)
    {
        CasingPart.Draw(on, frame, pattern);
        ExchangerPart.Draw(on, frame, pattern.Form);
        AshPart.Draw(on, frame, pattern.Form);
        BlowersPart.Draw(on, frame, pattern);
        FeedPart.Draw(on, frame, pattern.Form);
        FirePart.Draw(on, frame, pattern);
        VentPart.Draw(on, frame, pattern);
        SensePart.Draw(on, frame, pattern);
    }

    private static List<CutawayKey.Row> Rows(Pattern pattern, CutawayFrame frame, List<PartName> sensors, bool panels = true)
    {
        List<CutawayKey.Row> rows = [];
        foreach (var (letter, port, _) in PortMarks.Of(frame, pattern)) rows.Add(new(PortMarks.Sign(letter, new(0, 0)), Say.Of("section.gauge", Say.Term(port.Name))));
        rows.Add(new(Draught.Sample(d => d.Air(new(-11, 0), new(11, 0))), Say.Of("common.combustion-air")));
        rows.Add(new(Draught.Sample(d => d.Gas(new(-11, 0), new(11, 0))), Say.Of("section.flue-gas")));
        if (pattern.Heat.StreamIsWater) rows.Add(new(Draught.Sample(d => d.Water(new(-11, 0), new(11, 0))), "water"));
        else rows.Add(new(Draught.Sample(d => d.RoomAir(new(-11, 0), new(11, 0))), Say.Of("section.room-air")));
        for (var i = 0; i < sensors.Count; i++) rows.Add(new(PortMarks.Sensor(i + 1, new(0, 0)), sensors[i].Words));
        if (!panels) return rows;
        foreach (var (letter, panel, _) in PanelMarks.Of(frame, pattern)) rows.Add(new(PanelMarks.Sign(letter, new(0, 0)), Say.Term(panel.Name)));
        return rows;
    }

    private static string Describe(Pattern pattern, CutawayFrame frame, Draught on)
    {
        var ports = PortMarks.Of(frame, pattern).Select(p => $"{p.Letter} {Say.Term(p.Port.Name)}");
        return Say.Of("section.front-on-the-left-shown-a-gauge", string.Join(", ", on.Names.Concat(on.Sensors).Select(n => n.Words)), string.Join(", ", ports), string.Join(", ", pattern.Anatomy.Panels.Select(p => Say.Term(p.Name))));
    }
}
