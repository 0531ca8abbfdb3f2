using System.Text;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pictures.Profile;

/// <summary>What the profile says in words: verdicts, and the description that stands for the picture.</summary>
internal static class ProfileWords
{
    /// <summary>True when there is a reading and it is outside the healthy band.</summary>
    public static bool IsOut(ProfileStation s) => s.ReadingPa is { } p && (p < s.Healthy.LowPa || p > s.Healthy.HighPa);

    /// <summary>
    /// The word for a reading out of band. Where a healthy stove draws clearly, "too weak" and "too strong" speak
    /// of the draw; near room pressure "low" and "high" speak of the number.
    /// </summary>
    public static string Verdict(ProfileStation s)
    {
        if (s.Verdict is { Length: > 0 } word) return word;
        var above = s.ReadingPa > s.Healthy.HighPa;
        return s.Healthy.HighPa < -3 ? above ? Say.Of("common.too-weak") : Say.Of("common.too-strong") : above ? Say.Of("common.high") : Say.Of("common.low");
    }

    /// <summary>The whole picture in sentences.</summary>
    public static string Describe(ProfileInput input)
    {
        var unit = input.Unit;
        var said = new StringBuilder(Say.Of("profile.from-room-to-outdoors"));
        foreach (var s in input.Stations)
        {
            said.Append(' ').Append(s.Name[..1].ToUpperInvariant()).Append(s.Name[1..]).Append(' ');
            said.Append(s.ReadingPa is { } p ? unit.Value(p) : Say.Of("profile.not-read-2"));
            if (IsOut(s)) said.Append(", ").Append(Verdict(s));
            said.Append(Say.Of("profile.healthy-to", unit.Number(s.Healthy.LowPa), unit.Value(s.Healthy.HighPa)));
            if (s.LastPa is { } last) said.Append($", {input.LastCaption} {unit.Value(last)}");
            if (s.PredictedPa is { } predicted && input.PredictionCaption is { } caption) said.Append($", {unit.Value(predicted)} {caption}");
            said.Append('.');
        }

        foreach (var t in input.Thresholds) said.Append(Say.Of("profile.the", t.Name, t.Text(unit)));
        if (Ledger.From(input) is { Odd: { } odd } ledger)
        {
            var entry = ledger.Entries[odd];
            said.Append(Say.Of("profile.the-change-across-is-where-is-healthy", entry.Name, unit.Change(entry.Found!.Value), unit.Symbol, unit.Change(entry.Healthy)));
        }

        return said.ToString();
    }
}
