using System.Text;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pictures.Wiring;

/// <summary>What the wiring picture says in words.</summary>
internal static class WiringWords
{
    /// <summary>Volts at the resolution of a hand-held meter: whole above 20 V, tenths below.</summary>
    public static string Volts(double v) => Math.Abs(v) >= 20 ? Figures.Fixed(v, 0) : Figures.Short(v, 1);

    /// <summary>True when a reading is further from what is expected than allowed.</summary>
    public static bool IsOut(WiringInput input, WiringPoint p) =>
        p is { ReadV: { } read, ExpectV: { } expect } && Math.Abs(read - expect) > (input.ToleranceV ?? input.SupplyV / 10);

    /// <summary>The whole picture in sentences.</summary>
    public static string Describe(WiringInput input)
    {
        var said = new StringBuilder(Say.Of("circuit.in-series"));
        said.AppendJoin("; ", input.Chain.Select(item => item switch
        {
            WiringPoint p => Say.Of("circuit.point", p.Number) + (p.Note is null ? "" : $", {p.Note}") + Level(input, p),
            WiringPart p => p.Name + State(p) + (input.Live ? "" : Ohms(p)),
            _ => item.Id,
        })).Append('.');
        if (input.Meter is { } m)
        {
            string Number(string id) => input.Chain.OfType<WiringPoint>().First(p => p.Id == id).Number;
            said.Append(Say.Of("circuit.meter-on-lead-a-on-lead-b", m.Setting, Number(m.LeadA), Number(m.LeadB)));
            if (m.Value is not null) said.Append(Say.Of("circuit.shows", m.Value));
            if (m.Expect is not null) said.Append(Say.Of("circuit.expect-3", m.Expect));
            said.Append($". {m.Meaning}");
        }

        return said.Append(input.Live ? $" {input.Caution}. {input.CautionDetail}" : Say.Of("circuit.plug-out")).ToString();
    }

    private static string Level(WiringInput input, WiringPoint p)
    {
        if (!input.Live) return "";
        var said = p.ExpectV is { } e ? Say.Of("circuit.expect-4", Volts(e), input.Unit) : "";
        return said + (p.ReadV is { } r ? Say.Of("circuit.read-4", Volts(r), input.Unit) + (IsOut(input, p) ? Say.Of("circuit.not-as-expected") : "") : "");
    }

    private static string State(WiringPart p) => p.State switch
    {
        PartState.Closed => "",
        PartState.Open => p.AsItShould ? Say.Of("circuit.open-as-it-should-be-now") : Say.Of("circuit.open-here-2"),
        PartState.Unknown => Say.Of("circuit.state-not-known"),
    } + (p.Detail is null ? "" : $", {p.Detail}");

    private static string Ohms(WiringPart p) =>
        (p.ExpectOhms is null ? "" : Say.Of("circuit.expect-3", p.ExpectOhms)) + (p.ReadOhms is null ? "" : Say.Of("circuit.read-3", p.ReadOhms)) + (p.OhmsOut ? Say.Of("circuit.not-as-expected") : "");
}
