using System.Buffers;
using System.Text;
using System.Text.Json;
using Emberwright.Stove.Patterns.Anatomies;
using Emberwright.Stove.Quantities;

namespace Emberwright.Stove.Patterns;

/// <summary>Writes a card's JSON.</summary>
internal static class CardWriter
{
    public static string Write(StoveCard card)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var w = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true }))
        {
            w.WriteStartObject();
            w.WriteString("format", CardFile.Format);
            w.WriteNumber("version", CardFile.Version);
            w.WriteString("pattern", card.Pattern);
            Text(w, "name", card.Name);
            Switch(w, card);
            List(w, "healthy", card.Healthy, Healthy);
            if (card.HealthySite is { } site)
            {
                w.WriteStartObject("healthySite");
                SiteOf(w, site);
                w.WriteEndObject();
            }

            List(w, "parts", card.Parts, Part);
            if (card.Wiring is { } wiring)
            {
                CardElectric.Write(w, wiring);
            }

            List(w, "parameters", card.Parameters, CardElectric.Write);
            if (card.VentLimits is { } limits)
            {
                w.WriteStartObject("ventLimits");
                Number(w, "longestEquivalent", limits.LongestEquivalentM, Units.Metre);
                Number(w, "longestHorizontal", limits.LongestHorizontalM, Units.Metre);
                Number(w, "leastRise", limits.LeastRiseM, Units.Metre);
                w.WriteEndObject();
            }

            List(w, "codes", card.Codes, (to, code) =>
            {
                to.WriteString("code", code.Code);
                to.WriteString("meaning", code.Meaning);
                Text(to, "alarm", code.Alarm ?? "");
            });
            List(w, "access", card.Access, (to, panel) =>
            {
                Text(to, "panel", panel.Panel);
                to.WriteString("area", AreaNames.Of(panel.Area));
                to.WriteString("where", panel.Where);
                Text(to, "fasteners", panel.Fasteners);
                List(to, "fastening", panel.Fastening, FastenerOf);
                Text(to, "gasket", panel.Gasket);
            });
            List(w, "gaskets", card.Gaskets, (to, gasket) =>
            {
                to.WriteString("seat", gasket.Seat);
                Text(to, "where", gasket.Where);
                Text(to, "material", gasket.Material);
                Text(to, "size", gasket.Size);
                Text(to, "side", gasket.Side is { } side ? AnatomyWords.Sides.Of(side) : "");
            });
            List(w, "documents", card.Documents, (to, document) =>
            {
                to.WriteString("kind", document.Kind);
                to.WriteString("title", document.Title);
                to.WriteString("file", document.File);
            });
            w.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    private static void Switch(Utf8JsonWriter w, StoveCard card)
    {
        if (card.SensePort is null && card.SwitchClosesPa is null && card.SwitchOpensPa is null)
        {
            return;
        }

        w.WriteStartObject("vacuumSwitch");
        Text(w, "sensePort", card.SensePort ?? "");
        Number(w, "closes", card.SwitchClosesPa, Units.Pascal);
        Number(w, "opens", card.SwitchOpensPa, Units.Pascal);
        w.WriteEndObject();
    }

    private static void Healthy(Utf8JsonWriter w, HealthyValue value)
    {
        var (measure, place, condition) = value.Observable;
        w.WriteString("measure", MeasureUnits.Name(measure));
        w.WriteString("place", place);
        w.WriteString("condition", ConditionText.Format(condition));
        Number(w, "value", value.Value, MeasureUnits.Of(measure));
    }

    private static void SiteOf(Utf8JsonWriter w, Site site)
    {
        Number(w, "altitude", site.AltitudeM, Units.Metre);
        Number(w, "outdoor", site.OutdoorC, Units.Celsius);
        Number(w, "room", site.RoomC, Units.Celsius);
        Number(w, "wind", site.WindMPerS, Units.MetrePerSecond);
        Number(w, "housePressure", site.HousePa, Units.Pascal);
        w.WriteBoolean("outsideAir", site.OutsideAir);
        if (site.Vent is not { } run)
        {
            return;
        }

        w.WriteStartObject("vent");
        Number(w, "diameter", run.DiameterMm, Units.Millimetre);
        Number(w, "horizontal", run.HorizontalM, Units.Metre);
        Number(w, "vertical", run.VerticalM, Units.Metre);
        w.WriteNumber("elbows90", run.Elbows90);
        w.WriteNumber("elbows45", run.Elbows45);
        w.WriteNumber("tees", run.Tees);
        w.WriteString("terminal", run.Terminal);
        w.WriteString("lining", run.Lining);
        w.WriteBoolean("insulated", run.Insulated);
        w.WriteEndObject();
    }

    private static void FastenerOf(Utf8JsonWriter w, Fastener fastener)
    {
        w.WriteString("kind", AnatomyWords.Kinds.Of(fastener.Kind));
        w.WriteString("drive", AnatomyWords.Drives.Of(fastener.Drive));
        Text(w, "size", fastener.Size);
        w.WriteNumber("count", fastener.Count);
    }

    private static void Part(Utf8JsonWriter w, PartRating part)
    {
        w.WriteString("component", part.Component);
        Number(w, "power", part.PowerW, Units.Watt);
        Number(w, "resistance", part.ResistanceOhm, Units.Ohm);
        Number(w, "current", part.CurrentA, Units.Ampere);
        Number(w, "speed", part.SpeedPerMin, Units.RevolutionPerMinute);
        Number(w, "capacitance", part.CapacitanceF * 1e6, Units.Microfarad);
    }

    private static void List<T>(Utf8JsonWriter w, string name, IReadOnlyList<T> items, Action<Utf8JsonWriter, T> write)
    {
        if (items.Count == 0)
        {
            return;
        }

        w.WriteStartArray(name);
        foreach (var item in items)
        {
            w.WriteStartObject();
            write(w, item);
            w.WriteEndObject();
        }

        w.WriteEndArray();
    }

    private static void Text(Utf8JsonWriter w, string name, string text)
    {
        if (text.Length > 0)
        {
            w.WriteString(name, text);
        }
    }

    private static void Number(Utf8JsonWriter w, string name, double? value, Unit unit)
    {
        if (value is { } number)
        {
            w.WriteString(name, $"{number:R} {unit.Symbol}");
        }
    }
}
