using System.Text;

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
        var said = new StringBuilder("In series: ");
        said.AppendJoin("; ", input.Chain.Select(item => item switch
        {
            WiringPoint p => $"point {p.Number}" + (p.Note is null ? "" : $", {p.Note}") + Level(input, p),
            WiringPart p => p.Name + State(p) + (input.Live ? "" : Ohms(p)),
            _ => item.Id,
        })).Append('.');
        if (input.Meter is { } m)
        {
            string Number(string id) => input.Chain.OfType<WiringPoint>().First(p => p.Id == id).Number;
            said.Append($" Meter on {m.Setting}, lead A on {Number(m.LeadA)}, lead B on {Number(m.LeadB)}");
            if (m.Value is not null) said.Append($", shows {m.Value}");
            if (m.Expect is not null) said.Append($", expect {m.Expect}");
            said.Append($". {m.Meaning}");
        }

        return said.Append(input.Live ? $" {input.Caution}. {input.CautionDetail}" : " Plug out.").ToString();
    }

    private static string Level(WiringInput input, WiringPoint p)
    {
        if (!input.Live) return "";
        var said = p.ExpectV is { } e ? $", expect {Volts(e)} {input.Unit}" : "";
        return said + (p.ReadV is { } r ? $", read {Volts(r)} {input.Unit}" + (IsOut(input, p) ? ", not as expected" : "") : "");
    }

    private static string State(WiringPart p) => p.State switch
    {
        PartState.Closed => "",
        PartState.Open => p.AsItShould ? ", open as it should be now" : ", open here",
        PartState.Unknown => ", state not known",
    } + (p.Detail is null ? "" : $", {p.Detail}");

    private static string Ohms(WiringPart p) =>
        (p.ExpectOhms is null ? "" : $", expect {p.ExpectOhms}") + (p.ReadOhms is null ? "" : $", read {p.ReadOhms}") + (p.OhmsOut ? ", not as expected" : "");
}
