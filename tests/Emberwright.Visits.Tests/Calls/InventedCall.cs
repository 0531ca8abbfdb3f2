using System.Globalization;
using System.Text.Json;
using Emberwright.Stove;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Quantities;

namespace Emberwright.Visits.Tests.Calls;

/// <summary>
/// A call with a hidden fault: what people say and see is written down in their words (common practice, from memory, no
/// source), what a gauge reads comes from the virtual stove with that fault in it.
/// </summary>
internal sealed class InventedCall(JsonElement call)
{
    private readonly double[] _parameters = Hidden(call);

    public string Id => Text("id");

    public IReadOnlyList<string> Truth => Words("truth");

    public IReadOnlyList<string> Accept => Words("accept");

    public IReadOnlyList<string> Second => Words("second");

    public IReadOnlyList<string> MustNot => Words("mustNot");

    public string? Stop => call.TryGetProperty("stop", out var stop) ? stop.GetString() : null;

    /// <summary>The visit file.</summary>
    public string File()
    {
        var pattern = PatternLibrary.Find(Text("pattern"))!;
        var site = new Site(Number("altitude"), Number("outdoor"), null, Number("wind"));
        var stove = new VirtualStove(pattern, null, site);
        string[] lines =
        [
            Line(new { format = "emberwright-visit", version = 1, visit = Id.ToLowerInvariant() }),
            Line(new { at = "2026-01-14T09:00:00-05:00", author = "R. Sorrel", kind = "appliance", body = new { pattern = pattern.Id } }),
            Line(new { kind = "site", body = new { altitude = Say(site.AltitudeM, "m"), outdoor = Say(site.OutdoorC!.Value, "degC"), wind = Say(site.WindMPerS!.Value, "m/s") } }),
            Line(new { kind = "history", body = new { ageYears = Number("age"), fuelSinceService = Say(Number("tonnes"), "t") } }),
            Line(new { kind = "complaint", body = new { words = Text("complaint") } }),
            .. call.GetProperty("evidence").EnumerateArray().Select(e => Entry([.. e.EnumerateArray()], stove)),
        ];
        return string.Join('\n', lines) + "\n";
    }

    private string Entry(JsonElement[] e, VirtualStove stove)
    {
        string At(int i) => e[i].GetString()!;
        switch (At(0))
        {
            case "answer": return Line(new { kind = "answer", body = new { question = At(1), outcome = At(2) } });
            case "observation": return Line(new { kind = "observation", body = new { sign = At(1), outcome = At(2) } });
            case "code": return Line(new { kind = "code", body = new { code = At(1), meaning = At(2) } });
            case "meter": return Line(new { kind = "reading", body = new { testPoint = At(1), quantity = At(2), condition = At(3), value = At(4) } });
            case "reading": return Line(new { kind = "reading", body = new { port = At(1), quantity = At(2), condition = At(3), value = At(4) } });
            case "air": return Line(new { kind = "reading", body = new { port = At(2), quantity = At(1), condition = At(3), value = Read(stove, At(1), At(2), At(3)) } });
            case "action":
                foreach (var cured in e[3].EnumerateArray()) Cure(FaultList.All.Single(f => f.Id == cured.GetString()));
                return Line(new { kind = "action", body = new { action = At(1), outcome = At(2) } });
            default: throw new InvalidOperationException($"{Id}: evidence is of kind '{At(0)}'.");
        }
    }

    private string Read(VirtualStove stove, string quantity, string place, string words)
    {
        var condition = ConditionText.Parse(words)!.Value;
        var state = stove.Solve(_parameters, condition);
        return quantity switch
        {
            "pressure" when place == Places.SwitchHose => Say(state.Value(Measure.Pressure, Places.Firebox) * Math.Exp(_parameters[(int)Parameter.SensedPressure]), "Pa"),
            "pressure" => Say(state.Value(Measure.Pressure, place), "Pa"),
            "o2" => Say(state.Value(Measure.Oxygen, place), "%"),
            "temperature" => Say(state.Value(Measure.Temperature, place), "degC"),
            _ => throw new InvalidOperationException($"{Id}: no reading of '{quantity}'."),
        };
    }

    private void Cure(Fault fault)
    {
        foreach (var shift in fault.Shifts) _parameters[(int)shift.Parameter] = 0;
        if (fault.Fouling is { } fouling) _parameters[(int)fouling.Parameter] = 0;
    }

    private static double[] Hidden(JsonElement call)
    {
        var parameters = new double[Enum.GetValues<Parameter>().Length];
        foreach (var id in call.GetProperty("truth").EnumerateArray())
            foreach (var shift in FaultList.All.FirstOrDefault(f => f.Id == id.GetString())?.Shifts ?? []) parameters[(int)shift.Parameter] += shift.Mean;
        if (call.TryGetProperty("hidden", out var hidden))
            foreach (var own in hidden.EnumerateObject()) parameters[(int)Enum.Parse<Parameter>(own.Name)] = own.Value.GetDouble();
        return parameters;
    }

    private static string Say(double value, string unit) => value.ToString("0.##", CultureInfo.InvariantCulture) + " " + unit;

    private static string Line(object entry) => JsonSerializer.Serialize(entry);

    private string Text(string member) => call.GetProperty(member).GetString()!;

    private double Number(string member) => call.GetProperty(member).GetDouble();

    private List<string> Words(string member) => call.TryGetProperty(member, out var all) ? [.. all.EnumerateArray().Select(w => w.GetString()!)] : [];
}
