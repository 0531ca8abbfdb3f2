using System.Text.Json;
using Emberwright.Stove;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Rates;

/// <summary>Reads a firm's own rates: a JSON file that names only what the firm knows better.</summary>
public static class RatesFile
{
    /// <summary>Name of the format.</summary>
    public const string Format = "emberwright-priors";

    private const double MostPercent = 100;
    private const double MostPerTonne = 5;
    private const double MostMinutes = 600;
    private const string Unsaid = "your own file";

    /// <summary>The rates of each pattern in the file.</summary>
    /// <param name="json">The file's text.</param>
    /// <exception cref="InputException">The text is no such file, or a number in it makes no sense; field, value, range and remedy are named.</exception>
    public static IReadOnlyDictionary<string, PatternRates> Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        JsonDocument document;
        try
        {
            document = JsonDocument.Parse(json);
        }
        catch (JsonException e)
        {
            throw Refused("priors", "", $"The file is not JSON: wrong in line {e.LineNumber + 1}.", "Check quotation marks, commas and braces there.");
        }
        using (document)
        {
            var root = document.RootElement;
            if (root.ValueKind != JsonValueKind.Object || !root.TryGetProperty("format", out var format) || format.ValueKind != JsonValueKind.String || format.GetString() != Format)
                throw Refused("format", "", "This is not a file of priors.", $"Begin it with {{\"format\": \"{Format}\", \"version\": 1, …}}.");
            if (!root.TryGetProperty("patterns", out var patterns) || patterns.ValueKind != JsonValueKind.Object)
                throw Refused("patterns", "", "No patterns are given.", "Add \"patterns\": { \"damper-insert\": { … } }.");
            return patterns.EnumerateObject().ToDictionary(p => Known(p.Name), p => Pattern(p.Name, p.Value));
        }
    }

    private static string Known(string pattern) => PatternIds.All.Contains(pattern)
        ? pattern
        : throw Refused("patterns", pattern, "No pattern goes by this name.", $"It is one of {string.Join(", ", PatternIds.All)}.");

    private static PatternRates Pattern(string id, JsonElement pattern)
    {
        var catalogue = Catalogue.For(id);
        var faults = new Dictionary<string, Rate>();
        foreach (var member in Members(pattern, "faults"))
        {
            if (catalogue.Fault(member.Name) is null)
                throw Refused($"{id}.faults", member.Name, "The pattern has no such fault.", "The faults command lists the ids.");
            faults[member.Name] = Read($"{id}.faults.{member.Name}", member.Value, "ratePercent", MostPercent);
        }
        var fouling = new Dictionary<Parameter, Rate>();
        foreach (var member in Members(pattern, "fouling"))
        {
            if (!Passages.TryGetValue(member.Name, out var passage))
                throw Refused($"{id}.fouling", member.Name, "No passage goes by this name.", $"It is one of {string.Join(", ", Passages.Keys)}.");
            fouling[passage] = Read($"{id}.fouling.{member.Name}", member.Value, "perTonne", MostPerTonne);
        }
        var minutes = new Dictionary<string, Rate>();
        foreach (var member in Members(pattern, "minutes"))
        {
            if (catalogue.Check(member.Name) is null && catalogue.Action(member.Name) is null)
                throw Refused($"{id}.minutes", member.Name, "The pattern has no such check or action.", "The faults command lists the actions, next and attend name the checks.");
            minutes[member.Name] = Read($"{id}.minutes.{member.Name}", member.Value, "minutes", MostMinutes);
        }
        return new PatternRates(id, faults, fouling) { Minutes = minutes };
    }

    private static JsonElement.ObjectEnumerator Members(JsonElement pattern, string name) =>
        pattern.ValueKind == JsonValueKind.Object && pattern.TryGetProperty(name, out var members) && members.ValueKind == JsonValueKind.Object ? members.EnumerateObject() : default;

    private static InputException Refused(string field, string value, string trouble, string remedy) =>
        new(field, (value.Length > 0 ? $"{value}: " : "") + trouble.TrimEnd('.'), remedy);

    private static Rate Read(string path, JsonElement element, string name, double most)
    {
        if (element.ValueKind != JsonValueKind.Object || !element.TryGetProperty(name, out var number) || number.ValueKind != JsonValueKind.Number)
            throw Refused($"{path}.{name}", "", "A number belongs here.", $"Write {{\"{name}\": 2.5, \"origin\": \"…\"}}.");
        var value = number.GetDouble();
        if (!(value > 0 && value <= most)) throw Refused($"{path}.{name}", number.GetRawText(), $"It must lie above 0 and not above {most}.", "Check the decimal point.");
        return new Rate(value, element.TryGetProperty("origin", out var origin) && origin.ValueKind == JsonValueKind.String ? origin.GetString()! : Unsaid);
    }

    private static readonly Dictionary<string, Parameter> Passages = new()
    {
        ["intake"] = Parameter.Intake,
        ["burn-pot"] = Parameter.BurnPot,
        ["exchanger"] = Parameter.Exchanger,
        ["ash-passages"] = Parameter.AshPassages,
        ["vent"] = Parameter.Vent,
        ["wheel"] = Parameter.Wheel,
        ["room-air"] = Parameter.RoomAir,
    };
}
