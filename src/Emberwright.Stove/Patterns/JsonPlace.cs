using System.Text.Json;
using Emberwright.Stove.Quantities;

namespace Emberwright.Stove.Patterns;

/// <summary>An element of a file's JSON that knows its path and reports what is wrong with its members.</summary>
internal readonly record struct JsonPlace(JsonElement Element, string Path, JsonProblems Problems)
{
    public bool IsObject()
    {
        if (Element.ValueKind == JsonValueKind.Object)
        {
            return true;
        }

        Problems.Report(Path, "an object { … } belongs here", "Put the members in braces.");
        return false;
    }

    public JsonPlace? Member(string name) =>
        Find(name) is { } value && new JsonPlace(value, $"{Path}.{name}", Problems) is var place && place.IsObject() ? place : null;

    public IReadOnlyList<JsonPlace> Items(string name)
    {
        if (Find(name) is not { } list)
        {
            return [];
        }

        if (list.ValueKind != JsonValueKind.Array)
        {
            Problems.Report($"{Path}.{name}", "a list [ … ] belongs here", "Put the entries in square brackets.");
            return [];
        }

        var items = new List<JsonPlace>();
        foreach (var item in list.EnumerateArray())
        {
            var place = new JsonPlace(item, $"{Path}.{name}[{items.Count}]", Problems);
            if (place.IsObject())
            {
                items.Add(place);
            }
        }

        return items;
    }

    public string? Text(string name)
    {
        if (Find(name) is not { } value)
        {
            return null;
        }

        if (value.ValueKind == JsonValueKind.String)
        {
            return value.GetString();
        }

        Problems.Report($"{Path}.{name}", "words belong here", "Put them in quotation marks.");
        return null;
    }

    public string Needed(string name)
    {
        if (Find(name) is null)
        {
            Problems.Report($"{Path}.{name}", "missing", "This member must be given.");
            return "";
        }

        return Text(name) ?? "";
    }

    public string? OneOf(string name, IReadOnlyList<string> allowed)
    {
        var words = Text(name);
        if (words is not null && !allowed.Contains(words))
        {
            Problems.Report($"{Path}.{name}", $"\"{words}\" is not known", $"Use one of {string.Join(", ", allowed)}.");
            return null;
        }

        return words;
    }

    public bool Flag(string name)
    {
        if (Find(name) is not { } value)
        {
            return false;
        }

        if (value.ValueKind is not (JsonValueKind.True or JsonValueKind.False))
        {
            Problems.Report($"{Path}.{name}", "true or false belongs here", "Write it without quotation marks.");
        }

        return value.ValueKind == JsonValueKind.True;
    }

    public int? Count(string name)
    {
        if (Find(name) is not { } value)
        {
            return null;
        }

        if (value.ValueKind == JsonValueKind.Number && value.TryGetInt32(out var count) && count >= 0)
        {
            return count;
        }

        Problems.Report($"{Path}.{name}", "a whole number from 0 belongs here", "Write it without quotation marks.");
        return null;
    }

    /// <summary>A plain number, its unit in the member's name.</summary>
    public double? Number(string name)
    {
        if (Find(name) is not { } value)
        {
            return null;
        }

        if (value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out var number) && double.IsFinite(number))
        {
            return number;
        }

        Problems.Report($"{Path}.{name}", "a number belongs here", "Write it without quotation marks.");
        return null;
    }

    /// <summary>Reports every member that is not one of these: a misspelt one would be passed over in silence.</summary>
    public void Only(params string[] known)
    {
        foreach (var member in Element.EnumerateObject())
        {
            if (!known.Contains(member.Name))
            {
                Problems.Report($"{Path}.{member.Name}", "is not known here", $"Use {string.Join(", ", known)}.");
            }
        }
    }

    public bool Has(string name) => Find(name) is not null;

    /// <summary>A list of words.</summary>
    public IReadOnlyList<string> Words(string name)
    {
        if (Find(name) is not { } list)
        {
            return [];
        }

        if (list.ValueKind == JsonValueKind.Array && list.EnumerateArray().All(item => item.ValueKind == JsonValueKind.String))
        {
            return [.. list.EnumerateArray().Select(item => item.GetString()!)];
        }

        Problems.Report($"{Path}.{name}", "a list of words belongs here", "Put them in quotation marks, the list in square brackets.");
        return [];
    }

    /// <summary>A quantity with a unit, in its dimension's base unit.</summary>
    public double? Quantity(string name, Dimension dimension)
    {
        var text = Text(name);
        if (text is null)
        {
            return null;
        }

        if (Quantities.Quantity.TryParse(text, dimension, out var quantity, out var problem))
        {
            return quantity.Si;
        }

        Problems.Report($"{Path}.{name}", problem!.Message, problem.Remedy);
        return null;
    }

    /// <summary>A reading with a unit, in its measure's unit.</summary>
    public double? Reading(string name, Measure measure)
    {
        var text = Needed(name);
        if (text.Length == 0)
        {
            return null;
        }

        if (Quantities.Quantity.TryParse(text, measure, out var quantity, out var problem))
        {
            return quantity.In(measure);
        }

        Problems.Report($"{Path}.{name}", problem!.Message, problem.Remedy);
        return null;
    }

    private JsonElement? Find(string name) =>
        Element.ValueKind == JsonValueKind.Object && Element.TryGetProperty(name, out var value) && value.ValueKind != JsonValueKind.Null
            ? value
            : null;
}
