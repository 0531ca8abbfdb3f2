using System.Text.Json;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Quantities;

namespace Emberwright.Stove.Patterns;

/// <summary>Reads and writes the electrical members of a card: wiring, part ratings, codes, parameters.</summary>
internal static class CardElectric
{
    private static readonly string[] ContactKinds = ["normally-open", "normally-closed"];
    private static readonly string[] Resets = ["automatic", "manual"];
    private static readonly string[] Effects = ["feed", "blower-speed"];

    /// <summary>What a part's nameplate may say; outside it is a slip of the pen (common practice, no source).</summary>
    private static readonly (string Member, Dimension Dimension, double Low, double High, Unit Unit)[] Ranges =
    [
        ("power", Dimension.Power, 1, 1500, Units.Watt),
        ("resistance", Dimension.Resistance, 1, 5000, Units.Ohm),
        ("current", Dimension.Current, 0.02, 15, Units.Ampere),
        ("speed", Dimension.Rotation, 0.5, 6000, Units.RevolutionPerMinute),
        ("capacitance", Dimension.Capacitance, 0.2e-6, 50e-6, Units.Microfarad),
    ];

    internal static PartRating Part(JsonPlace at, Pattern? pattern)
    {
        var component = at.Needed("component");
        if (pattern is not null && component.Length > 0 && !pattern.Wiring.HasComponent(component))
        {
            at.Problems.Report($"{at.Path}.component", $"\"{component}\" is not a part of {pattern.Id}'s wiring", $"Use one of {Ids(pattern, c => c is Motor or Igniter or RunCapacitor)}.");
        }

        var values = Ranges.ToDictionary(r => r.Member, r => Ranged(at, r.Member, r.Dimension, r.Low, r.High, r.Unit));
        return new PartRating(component, values["power"], values["resistance"], values["current"], values["speed"]) { CapacitanceF = values["capacitance"] };
    }

    internal static CardCode Code(JsonPlace at) => new(at.Needed("code"), at.Needed("meaning")) { Alarm = at.OneOf("alarm", Alarms.All) };

    internal static CardParameter Parameter(JsonPlace at) => new(at.Needed("parameter"), at.Needed("value"))
    {
        Changes = at.OneOf("changes", Effects) switch { "feed" => ParameterEffect.Feed, "blower-speed" => ParameterEffect.BlowerSpeed, _ => null },
        PercentPerStep = PerStep(at),
    };

    internal static CardWiring Wiring(JsonPlace at, Pattern? pattern) => new(
        Ranged(at, "supply", Dimension.Voltage, 100, 250, Units.Volt),
        at.Number("frequencyHz") is { } hertz && (hertz is 50 or 60 || Complain(at, "frequencyHz", $"{hertz:G4} Hz is no mains frequency", "Give 50 or 60.")) ? hertz : null,
        [.. at.Words("feedOrder")],
        [.. at.Items("contacts").Select(c => Contact(c, pattern))]);

    /// <summary>Builds the card's circuit and reports what keeps it from being one.</summary>
    internal static void Prove(StoveCard card, Pattern? pattern, JsonProblems problems)
    {
        if (pattern is null || problems.Found.Count > 0) return;
        try
        {
            CardCircuit.Of(pattern, card);
        }
        catch (CircuitException e)
        {
            problems.Report("$.wiring", e.Message.TrimEnd('.'), "Check the card's wiring and parts against the label and the diagram.");
        }
    }

    internal static void Write(Utf8JsonWriter w, CardWiring wiring)
    {
        w.WriteStartObject("wiring");
        if (wiring.SupplyV is { } volts) w.WriteString("supply", $"{volts:R} V");
        if (wiring.FrequencyHz is { } hertz) w.WriteNumber("frequencyHz", hertz);
        if (!wiring.FeedOrder.IsEmpty)
        {
            w.WriteStartArray("feedOrder");
            foreach (var id in wiring.FeedOrder) w.WriteStringValue(id);
            w.WriteEndArray();
        }

        if (!wiring.Contacts.IsEmpty)
        {
            w.WriteStartArray("contacts");
            foreach (var contact in wiring.Contacts) Write(w, contact);
            w.WriteEndArray();
        }

        w.WriteEndObject();
    }

    internal static void Write(Utf8JsonWriter w, CardParameter parameter)
    {
        w.WriteString("parameter", parameter.Name);
        w.WriteString("value", parameter.Value);
        if (parameter.Changes is not { } effect) return;
        w.WriteString("changes", effect switch { ParameterEffect.Feed => "feed", ParameterEffect.BlowerSpeed => "blower-speed" });
        w.WriteNumber("percentPerStep", parameter.PercentPerStep);
    }

    private static void Write(Utf8JsonWriter w, CardContact contact)
    {
        w.WriteStartObject();
        w.WriteString("component", contact.Component);
        if (contact.NormallyOpen is { } open) w.WriteString("contact", ContactKinds[open ? 0 : 1]);
        if (contact.Reset is { } reset) w.WriteString("reset", Resets[reset == ResetKind.Automatic ? 0 : 1]);
        if (contact.ActsC is { } acts) w.WriteString("acts", $"{acts:R} °C");
        if (contact.ReleasesC is { } releases) w.WriteString("releases", $"{releases:R} °C");
        w.WriteEndObject();
    }

    private static CardContact Contact(JsonPlace at, Pattern? pattern)
    {
        var id = at.Needed("component");
        var contact = pattern is not null && pattern.Wiring.HasComponent(id) ? pattern.Wiring[id] as Interlock : null;
        if (pattern is not null && contact is null && id.Length > 0)
        {
            at.Problems.Report($"{at.Path}.component", $"\"{id}\" is not a contact of {pattern.Id}", $"Use one of {Ids(pattern, c => c is Interlock)}.");
        }

        bool? open = at.OneOf("contact", ContactKinds) is { } kind ? kind == ContactKinds[0] : null;
        if (contact is not null && open is { } said && said != contact.NormallyOpen && contact.Kind is not (ContactKind.LidSwitch or ContactKind.DoorSwitch))
        {
            at.Problems.Report($"{at.Path}.contact", $"a {contact.Name.ToLowerInvariant()} in series with a load is {ContactKinds[contact.NormallyOpen ? 0 : 1]}",
                "On the bench, cold and at rest, read whether it is open.");
        }

        var acts = Ranged(at, "acts", Dimension.Temperature, 30, 200, Units.Celsius);
        var releases = Ranged(at, "releases", Dimension.Temperature, 20, 190, Units.Celsius);
        if (acts is { } a && releases is { } r && r >= a)
        {
            at.Problems.Report($"{at.Path}.releases", $"{r:G4} °C is not below {a:G4} °C, where it acts", "A disc goes back 8 to 17 K cooler than it acts.");
        }

        if (contact is not null && (acts ?? releases) is not null && pattern!.Program.Setting(id) is null or { ActsAt: < 30 })
        {
            at.Problems.Report($"{at.Path}.acts", $"a {contact?.Name.ToLowerInvariant()} does not act by temperature", "Give temperatures for discs and thermostats only.");
        }

        return new CardContact(id, open, at.OneOf("reset", Resets) is { } reset ? reset == Resets[0] ? ResetKind.Automatic : ResetKind.Manual : null, acts, releases);
    }

    private static double PerStep(JsonPlace at) =>
        at.Number("percentPerStep") is { } percent && (Math.Abs(percent) is > 0 and <= 50 || Complain(at, "percentPerStep", $"{percent:G4} % is outside −50 to 50 %, nought excluded", "Give the change for one step of the setting."))
            ? percent : 5;

    private static double? Ranged(JsonPlace at, string member, Dimension dimension, double low, double high, Unit unit)
    {
        if (at.Quantity(member, dimension) is not { } value) return null;
        if (value >= low && value <= high) return value;
        at.Problems.Report($"{at.Path}.{member}", $"{unit.FromBase(value):G4} {unit.Symbol} is outside {unit.FromBase(low):G4} to {unit.FromBase(high):G4} {unit.Symbol}", "Read the label again: number, unit and decimal point.");
        return null;
    }

    private static bool Complain(JsonPlace at, string member, string message, string remedy)
    {
        at.Problems.Report($"{at.Path}.{member}", message, remedy);
        return false;
    }

    private static string Ids(Pattern pattern, Func<WiringComponent, bool> wanted) =>
        string.Join(", ", pattern.Wiring.Components.Where(wanted).Select(c => c.Id));
}
