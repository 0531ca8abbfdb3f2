using System.Globalization;
using System.Text;
using Emberwright.Diagnosis;

namespace Emberwright.Trials.Calibration;

/// <summary>What the calibration trial found, as Markdown.</summary>
internal static class CalibrationTable
{
    private static readonly Dictionary<Rung, string> Names = new()
    {
        [Rung.Complaint] = "complaint",
        [Rung.Answers] = "+ answers",
        [Rung.AsFound] = "+ as found",
        [Rung.ThreeState] = "+ three-state test",
        [Rung.Electrical] = "+ wiring",
    };

    /// <summary>Writes the whole page.</summary>
    public static string Of(IReadOnlyList<CalibrationRow> rows)
    {
        var text = new StringBuilder();
        void Line(FormattableString line) => text.AppendLine(line.ToString(CultureInfo.InvariantCulture));
        var ordinary = rows.Where(r => r.Mismatch == 1).ToArray();
        var doubled = rows.Where(r => r.Mismatch == 2).ToArray();
        Line($"# Calibration of stated probabilities");
        Line($"");
        Line($"{ordinary.Length} hidden stoves ({string.Join(", ", ordinary.GroupBy(r => r.Pattern).Select(g => $"{g.Key} {g.Count()}"))}), and {doubled.Length} with the mismatch of their construction doubled. Each is built otherwise than the model, fouled everywhere, and asked about with little evidence and with much. {Header.Made}");
        Line($"");
        Goals(ordinary, doubled);
        Section("Ordinary mismatch", ordinary);
        Section("Mismatch doubled", doubled);
        Line($"Columns: *first right*, the likeliest fault was there (of stoves with a fault); *in three*, a true one among the first three; *Brier*, summed over faults; *error*, expected calibration error of fault marginals of 1 % and above, in ten bins; *of first*, the same of the likeliest fault alone; *wrong at 95 %*, of marginals stated at 95 % and above; *area wrong too*, of these, where nothing else in the same area of the stove was wrong either; *alarm*, hits on causes that no catalogue lists and false alarms on all others; *cannot tell*, share where nothing was singled out.");
        Line($"");
        Areas(ordinary);
        Patterns(ordinary);
        Line($"Mean time of one conclusion, ms: {string.Join(", ", ordinary.SelectMany(r => r.Says).GroupBy(s => s.Rung).OrderBy(g => g.Key).Select(g => FormattableString.Invariant($"{Names[g.Key]} {g.Average(s => s.Milliseconds):0}")))} (under load; rough).");
        return text.ToString();

        void Goals(IReadOnlyList<CalibrationRow> some, IReadOnlyList<CalibrationRow> more)
        {
            if (some.Count == 0) return;
            var all = Marginals(some);
            var error = Reliability.Error(all);
            var (wrong, sure) = Reliability.NearlySureOnes(all);
            var covered = some.SelectMany(r => r.Says.Where(s => s.Rung is Rung.AsFound or Rung.ThreeState).SelectMany(s => s.Areas)).GroupBy(a => a.Area)
                .Select(g => (Area: g.Key, Share: 100.0 * g.Count(a => a.Holds) / g.Count())).OrderBy(a => a.Share).ToArray();
            Header.Goal(text, "calibration error pooled over patterns at most 0.03", $"{error:0.000}", error <= 0.03);
            Header.Goal(text, "at most 2 % wrong among marginals stated at 95 % and above", $"{wrong} of {sure}, {100.0 * wrong / Math.Max(sure, 1):0.0} % (95 % interval {Header.Within(wrong, sure)})", 50 * wrong <= sure);
            Header.Goal(text, "90 % intervals hold 85–95 % in each area", $"{covered[0].Area} {covered[0].Share:0} % to {covered[^1].Area} {covered[^1].Share:0} % (readings as found and three-state test)", covered[0].Share >= 85 && covered[^1].Share <= 95);
            var (bad, ever) = Reliability.NearlySureOnes(Marginals(more));
            Line($"- With the mismatch doubled: error {Reliability.Error(Marginals(more)):0.000}, wrong at 95 % {bad} of {ever}.");
            Line($"");
        }

        Stated[] Marginals(IReadOnlyList<CalibrationRow> some) => [.. some.SelectMany(r => r.Says.SelectMany(s => Reliability.Marginals(r, s)))];

        void Section(string title, IReadOnlyList<CalibrationRow> some)
        {
            if (some.Count == 0) return;
            Line($"## {title}");
            Line($"");
            Line($"| evidence | first right | in three | Brier | error | of first | wrong at 95 % | area wrong too | alarm: hits / false | cannot tell |");
            Line($"| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
            foreach (var rung in Enum.GetValues<Rung>())
            {
                (CalibrationRow Row, Statement Says)[] said = [.. some.Select(r => (r, r.Says.First(s => s.Rung == rung)))];
                var faulty = said.Where(s => s.Row.Truth.Any(t => t is not (Suspect.Nothing or Suspect.Unlisted))).ToArray();
                var marginals = said.SelectMany(s => Reliability.Marginals(s.Row, s.Says)).ToArray();
                var first = said.SelectMany(s => Reliability.First(s.Row, s.Says)).ToArray();
                var (wrong, sure) = Reliability.NearlySureOnes(marginals);
                var strange = said.Where(s => s.Row.Truth.Contains(Suspect.Unlisted)).ToArray();
                var known = said.Where(s => !s.Row.Truth.Contains(Suspect.Unlisted)).ToArray();
                Line($"| {Names[rung]} | {Share(faulty.SelectMany(s => Reliability.First(s.Row, s.Says)).Select(f => f.So))} | {Share(faulty.Select(s => Reliability.AmongThree(s.Row, s.Says)))} | {said.Average(s => Reliability.Brier(s.Row, s.Says)):0.000} | {Reliability.Error(marginals):0.000} | {Reliability.Error(first):0.000} | {wrong}/{sure} = {(sure == 0 ? 0 : 100.0 * wrong / sure):0.0} % | {said.Sum(s => Reliability.WrongAreaToo(s.Row, s.Says))} | {Share(strange.Select(s => s.Says.Misfit))} / {Share(known.Select(s => s.Says.Misfit))} | {Share(said.Select(s => s.Says.CannotTell))} |");
            }

            var all = some.SelectMany(r => r.Says.SelectMany(s => Reliability.Marginals(r, s))).ToArray();
            var (bad, ever) = Reliability.NearlySureOnes(all);
            Line($"| **all** | | | | **{Reliability.Error(all):0.000}** | {Reliability.Error(some.SelectMany(r => r.Says.SelectMany(s => Reliability.First(r, s)))):0.000} | **{bad}/{ever} = {(ever == 0 ? 0 : 100.0 * bad / ever):0.0} %** | {some.Sum(r => r.Says.Sum(s => Reliability.WrongAreaToo(r, s)))} | | |");
            Line($"");
        }

        void Areas(IReadOnlyList<CalibrationRow> some)
        {
            if (some.Count == 0) return;
            Line($"## Coverage of the 90 % intervals");
            Line($"");
            Rung[] rungs = [Rung.Complaint, Rung.AsFound, Rung.ThreeState];
            Line($"| area | {string.Join(" | ", rungs.Select(r => Names[r]))} | mean width after the three-state test |");
            Line($"| --- | --- | --- | --- | --- |");
            foreach (var area in some.SelectMany(r => r.Says[0].Areas).Select(a => a.Area).Distinct())
            {
                AreaStatement[] At(Rung rung) => [.. some.SelectMany(r => r.Says.Where(s => s.Rung == rung).SelectMany(s => s.Areas)).Where(a => a.Area == area)];
                Line($"| {area} | {string.Join(" | ", rungs.Select(r => Share(At(r).Select(a => a.Holds))))} | {At(Rung.ThreeState).Average(a => a.High - a.Low):0.00} |");
            }

            Line($"");
        }

        void Patterns(IReadOnlyList<CalibrationRow> some)
        {
            if (some.Count == 0) return;
            Line($"## By pattern, all evidence together");
            Line($"");
            Line($"| pattern | stoves | first right with everything known | error | wrong at 95 % |");
            Line($"| --- | --- | --- | --- | --- |");
            foreach (var pattern in some.GroupBy(r => r.Pattern))
            {
                var marginals = pattern.SelectMany(r => r.Says.SelectMany(s => Reliability.Marginals(r, s))).ToArray();
                var (wrong, sure) = Reliability.NearlySureOnes(marginals);
                var faulty = pattern.Where(r => r.Truth.Any(t => t is not (Suspect.Nothing or Suspect.Unlisted)));
                Line($"| {pattern.Key} | {pattern.Count()} | {Share(faulty.SelectMany(r => Reliability.First(r, r.Says[^1])).Select(f => f.So))} | {Reliability.Error(marginals):0.000} | {wrong}/{sure} = {(sure == 0 ? 0 : 100.0 * wrong / sure):0.0} % |");
            }

            Line($"");
        }
    }

    private static string Share(IEnumerable<bool> which)
    {
        var all = which.ToArray();
        return all.Length == 0 ? "–" : FormattableString.Invariant($"{100.0 * all.Count(b => b) / all.Length:0} %");
    }
}
