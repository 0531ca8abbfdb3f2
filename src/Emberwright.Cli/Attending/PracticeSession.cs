using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Planning;
using Emberwright.Diagnosis.Practice;
using Emberwright.Diagnosis.Safety;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Quantities;
using Spectre.Console;

namespace Emberwright.Cli.Attending;

/// <summary>A practice visit at the terminal.</summary>
internal sealed class PracticeSession(Terminal terminal, UnitSystem units, PracticeVisit visit, int seed)
{
    private IReadOnlyList<(string Id, string Name)> _listed = [];

    /// <summary>Lets the user work until the stove runs, the input ends or they give up; then compares.</summary>
    public void Run()
    {
        Open();
        Say("  Type help for what can be typed. Everything has its price; nothing here can hurt anybody, so hurt nobody when it is real.");
        while (!visit.Solved && Prompt() is { } line)
        {
            if (line is "end" or "quit" or "exit") break;
            Obey(line);
        }

        Close();
    }

    /// <summary>Shows the planner's way alone.</summary>
    public void Watch()
    {
        Open();
        var said = 0;
        PracticeVisit? way = null;
        foreach (var step in visit.PlannersWay())
        {
            way = step;
            for (; said < way.Steps.Count; said++) Say(way.Steps[said]);
        }

        Say("");
        Say($"Hidden: {Names(visit.Hidden)}. {(way!.Solved ? "It runs" : $"Left: {Names(way.Left)}")}; {way.Cost:0.##} in all.");
    }

    private void Open()
    {
        var complaint = visit.Catalogue.Sign(Complaints.Sign)!;
        Say($"Practice stove {seed}: {visit.Case.Pattern.Name}");
        Say($"  {visit.Case.Site.AltitudeM:0} m above the sea, {visit.Case.Site.OutdoorC:0} °C outside; {visit.Case.History.AgeYears:0} years old, {visit.Case.History.TonnesSinceCleaning:0.#} t burned since it was cleaned.");
        Say($"  The customer: {complaint.Outcomes[complaint.IndexOf(visit.Complaint)].Words}.");
    }

    private void Obey(string line)
    {
        var (verb, rest) = line.Split(' ', 2) is [var v, var r] ? (v.ToLowerInvariant(), r.Trim()) : (line.ToLowerInvariant(), "");
        switch (verb)
        {
            case "": break;
            case "help" or "?": Help(); break;
            case "list": List(rest); break;
            case "find" when rest.Length > 0: Find(rest); break;
            case "safe": Do(Planner.MakeSafe); break;
            case "bill": SayBill(); break;
            case "hint": Hint(); break;
            case "do" when rest.Length > 0: Do(Id(rest)); break;
            default: Do(Id(line)); break;
        }
    }

    private void Do(string id)
    {
        if (visit.Refusal(id) is { } why) Say($"{why}{(why.StartsWith("No check", StringComparison.Ordinal) ? " find WORDS looks for one; list shows all." : " Type safe.")}");
        else
        {
            Say(visit.Do(id));
            foreach (var stop in SafetyStops.Standing(visit.Evidence)) Say($"    STOP: {stop.Words}");
        }
    }

    private void Say(PracticeStep step)
    {
        Say($"{step.Name} ({step.Minutes:0.#} min, {step.Cost:0.##})");
        foreach (var shown in step.Shown) Say($"    {Words(shown)}");
        if (step.Shown.Count == 0 && step.Kind is PracticeStepKind.Look or PracticeStepKind.Measure) Say("    It would need a fire, and the stove has none.");
    }

    private string Words(Evidence evidence) => evidence switch
    {
        SignEvidence s when visit.Catalogue.Sign(s.Sign) is { } sign => $"{sign.Question} {sign.Outcomes[sign.IndexOf(s.Outcome)].Words}.",
        ReadingEvidence r => $"{r.Observable.Place.Replace('-', ' ')}, {MeasureUnits.Name(r.Observable.Measure)}, {ConditionText.Format(r.Observable.Condition)}: {(double.IsFinite(r.Value) ? new Shown(r.Observable.Measure, units).Text(r.Value) : "open")}",
        _ => evidence.Id,
    };

    private string Id(string typed) => int.TryParse(typed, out var n) && n >= 1 && n <= _listed.Count ? _listed[n - 1].Id : typed;

    private void List(string kind)
    {
        var wanted = kind.Length == 0 ? null : kind.ToLowerInvariant();
        var all = visit.Catalogue.Checks.Select(c => (c.Id, c.Name, Kind: KindWord(c.Kind))).Concat(
            visit.Catalogue.Actions.Where(a => visit.Catalogue.Check(a.Id) is null).Select(a => (a.Id, a.Name, Kind: "mend"))).ToList();
        if (wanted is null || all.All(x => x.Kind != wanted))
        {
            Say($"list KIND shows one kind: {string.Join(", ", all.Select(x => x.Kind).Distinct())}.");
            return;
        }

        Number([.. all.Where(x => x.Kind == wanted).Select(x => (x.Id, x.Name))]);
    }

    private static string KindWord(CheckKind kind) => kind switch
    {
        CheckKind.Ask => "ask",
        CheckKind.ReadStove or CheckKind.Look => "look",
        CheckKind.Measure => "measure",
        CheckKind.Try => "try",
        CheckKind.Clean => "clean",
        CheckKind.Reset => "reset",
        CheckKind.Swap => "mend",
    };

    private void Find(string words)
    {
        var wanted = words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Number([.. visit.Catalogue.Checks.Select(c => (c.Id, c.Name))
            .Concat(visit.Catalogue.Actions.Where(a => visit.Catalogue.Check(a.Id) is null).Select(a => (a.Id, a.Name)))
            .Where(c => wanted.All(w => c.Name.Contains(w, StringComparison.OrdinalIgnoreCase) || c.Id.Contains(w, StringComparison.OrdinalIgnoreCase)))]);
    }

    private void Number(IReadOnlyList<(string Id, string Name)> found)
    {
        _listed = found;
        for (var n = 0; n < found.Count; n++) Say($"  {n + 1,3}  {found[n].Name}");
        Say(found.Count == 0 ? "Nothing here speaks of that." : "Type a number to do it.");
    }

    private void Hint()
    {
        var progress = Diagnose.Infer(visit.Case, visit.Evidence, visit.Catalogue);
        var situation = new Situation(visit.Evidence, progress.Beliefs!.Stops, MadeSafe: visit.MadeSafe);
        Say(new Planner(visit.Catalogue, Tariff.Default).Next(progress.Posterior!, situation).Best is { } best ? $"{best.Name}. {best.Because}" : "Nothing more is worth its cost.");
    }

    private void SayBill() => Say($"{visit.Steps.Count} steps, {visit.Steps.Sum(s => s.Minutes):0.#} min, {visit.Steps.Sum(s => s.Cost):0.##} so far.");

    private void Close()
    {
        Say("");
        Say(visit.Solved ? "It runs." : "You leave it as it is.");
        Say($"Hidden: {Names(visit.Hidden)}.");
        var planner = visit.PlannersWay().Last();
        var review = PracticeReview.Of(visit, planner);
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns(new TableColumn(""), new TableColumn("yours").RightAligned(), new TableColumn("planner's").RightAligned());
        foreach (var row in review.Rows) table.AddRow(Markup.Escape(row.Name), $"{row.Yours:0.##}", $"{row.Planners:0.##}");
        table.AddRow("In all", $"{review.Yours:0.##}", $"{review.Planners:0.##}");
        terminal.Console.Write(table);
        Say("The planner's way:");
        foreach (var step in planner.Steps) Say($"  {step.Name} ({step.Cost:0.##}){(step.Cured.Count > 0 ? $": cured {Names(step.Cured)}" : "")}");
        foreach (var remark in review.Remarks) Say(remark);
    }

    private void Help()
    {
        Say("  find WORDS     checks and work by words, numbered");
        Say("  list KIND      all of one kind: ask, look, measure, try, clean, reset, mend");
        Say("  NUMBER or id   does it: the stove answers, the bill grows");
        Say("  safe           makes the stove safe, which opened work needs first");
        Say("  bill           what it has cost so far");
        Say("  hint           what the planner would do now");
        Say("  end            gives up; shows what was hidden and compares");
    }

    private string? Prompt()
    {
        terminal.Out.Write("> ");
        terminal.Out.Flush();
        return terminal.In.ReadLine()?.Trim();
    }

    private static string Names(IReadOnlyList<Fault> faults) => faults.Count == 0 ? "nothing" : string.Join(" and ", faults.Select(f => f.Name));

    private void Say(string text) => terminal.Console.WriteLine(text);
}
