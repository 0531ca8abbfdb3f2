using System.Text.Json;
using System.Text.Json.Nodes;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits;

/// <summary>
/// Puts several entries of a kind that describes one thing (site, appliance, …) together, member by member: the
/// latest value is used, and members on which devices disagree are listed.
/// </summary>
internal static class Singletons
{
    public static T? Combine<T>(IEnumerable<Fact<T>> facts, List<Difference> differences) where T : EntryBody =>
        Combine(facts, differences, JournalFormat.Visit, null);

    /// <param name="facts">What was said, in order.</param>
    /// <param name="differences">Takes what devices disagree on.</param>
    /// <param name="format">The journal's format.</param>
    /// <param name="name">What the differences are named after; the kind unless given.</param>
    public static T? Combine<T>(IEnumerable<Fact<T>> facts, List<Difference> differences, JournalFormat format, string? name) where T : EntryBody
    {
        var all = facts.ToArray();
        if (all.Length == 0) return null;
        if (all.Length == 1) return all[0].Body;
        var kind = all[0].Body.Kind;
        var whole = new JsonObject();
        var claims = new SortedDictionary<string, List<Claim>>(StringComparer.Ordinal);
        foreach (var fact in all) Overlay(whole, Members(fact.Body), name ?? kind, fact.Entry, claims);
        foreach (var (member, said) in claims)
            if (said.Select(c => c.Value).Distinct().Count() > 1) differences.Add(new Difference(member, said));
        return (T)Read(format, kind, whole);
    }

    private static void Overlay(JsonObject whole, JsonObject part, string path, Entry entry, SortedDictionary<string, List<Claim>> claims)
    {
        foreach (var (name, value) in part)
        {
            var member = $"{path}.{name}";
            if (value is JsonObject inner && name == "vent")
            {
                if (whole[name] is not JsonObject outer) whole[name] = outer = [];
                Overlay(outer, inner, member, entry, claims);
                continue;
            }

            whole[name] = value?.DeepClone();
            if (!claims.TryGetValue(member, out var said)) claims[member] = said = [];
            said.RemoveAll(c => c.Device == entry.Device);
            said.Add(new Claim(Text(value), entry.Id, entry.Device, entry.Author));
        }
    }

    private static JsonObject Members(EntryBody body) => JsonNode.Parse(BodyWriter.Object(body.Write))!.AsObject();

    private static string Text(JsonNode? value) =>
        value?.GetValueKind() == JsonValueKind.String ? value.AsValue().GetValue<string>() : value?.ToJsonString() ?? "";

    private static EntryBody Read(JournalFormat format, string kind, JsonObject whole)
    {
        var json = whole.ToJsonString();
        using var document = JsonDocument.Parse(json);
        return format.Read(kind, new BodyReader(document.RootElement, 0, "body.", []), json);
    }
}
