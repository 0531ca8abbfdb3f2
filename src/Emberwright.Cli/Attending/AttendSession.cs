using Emberwright.Cli.Commands;
using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Planning;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Journal;
using Emberwright.Visits.SigningOff;
using Spectre.Console;

namespace Emberwright.Cli.Attending;

/// <summary>One attendance at the terminal: says the next check, takes what is typed, writes it down at once, says what it changed.</summary>
internal sealed class AttendSession
{
    private const int Choices = 5;

    private readonly Terminal _terminal;
    private readonly VisitLog _log;
    private readonly UnitSystem _units;
    private readonly bool _onSite;
    private readonly HashSet<Item> _left = [];
    private readonly Workings _workings = new();
    private Findings _findings;
    private NextCheck _next;
    private string? _inHand;

    /// <summary>An attendance, or a call.</summary>
    /// <param name="terminal">Where lines are read and written.</param>
    /// <param name="log">The visit's file.</param>
    /// <param name="units">Units of the healthy figures.</param>
    /// <param name="findings">What is found so far.</param>
    /// <param name="onSite">False for a telephone call: the emergency question first, then questions only.</param>
    public AttendSession(Terminal terminal, VisitLog log, UnitSystem units, Findings findings, bool onSite)
    {
        (_terminal, _log, _units, _findings, _onSite) = (terminal, log, units, findings, onSite);
        _next = Plan();
    }

    /// <summary>Runs until the input ends or says so; returns what sign-off then lacks.</summary>
    public SignOffReview Run()
    {
        Say(_findings.Title);
        Say(Movement.First(_findings.Beliefs));
        SayStops(_findings.Beliefs.Stops);
        Take(_next.Best);
        while (Prompt() is { } line)
        {
            if (line is "end" or "quit" or "exit") break;
            Obey(line);
        }

        return Close();
    }

    private Item? Current => _inHand is null ? null : Sheet.Of(_inHand, _findings).FirstOrDefault(i => !_left.Contains(i));

    private NextCheck Plan() => _onSite ? new Planner(_findings.Catalogue, Tariff.Default).Next(_findings.Posterior, _findings.Situation, Choices) : CallQuestions();

    private CallPlan CallPlan() => Call.Plan(_findings.Catalogue, Tariff.Default, _findings.Posterior, _findings.Situation);

    private NextCheck CallQuestions()
    {
        var plan = CallPlan();
        var first = new RecommendedCheck(Sheet.Emergency, "Ask first", 0, 0, "Before any question about the stove: people.", 0, []);
        return plan.Emergency.Stands || plan.Questions.Count == 0 && plan.Emergency.Asked ? new NextCheck(null, [])
            : plan.Emergency.Asked ? new NextCheck(plan.Questions[0], [.. plan.Questions.Skip(1)])
            : new NextCheck(first, plan.Questions);
    }

    private void Obey(string line)
    {
        var (verb, rest) = line.Split(' ', 2) is [var v, var r] ? (v.ToLowerInvariant(), r.Trim()) : (line.ToLowerInvariant(), "");
        switch (verb)
        {
            case "": LeaveOpen(); break;
            case "help" or "?": Help(); break;
            case "or" or "others": SayChoices(); break;
            case "take" when rest.Length > 0: TakeChoice(rest); break;
            case "find" when rest.Length > 0: Find(rest); break;
            case "suspects": SaySuspects(); break;
            case "missing": SayMissing(Review()); break;
            case "undo": Undo(); break;
            case "redo": Redo(); break;
            default: Write(line); break;
        }
    }

    private void Write(string line)
    {
        var typed = TypedEntry.Read(line, Current, _findings);
        if (typed.Body is null) Say(typed.Said);
        else Append(typed.Body, typed.Said);
    }

    private void Append(EntryBody body, string said)
    {
        var (before, asked) = (_findings.Beliefs, Current);
        var (file, _) = _log.Append(body);
        Say($"Written. {said}");
        _findings = Findings.Of(file, _onSite, workings: _workings) ?? _findings;
        Say(Movement.Between(before, _findings.Beliefs));
        SayStops([.. _findings.Beliefs.Stops.Where(s => before.Stops.All(b => b.Rule != s.Rule))]);
        foreach (var gone in before.Stops.Where(b => _findings.Beliefs.Stops.All(s => s.Rule != b.Rule))) Say($"No longer standing: {gone.Words}");
        _next = Plan();
        var goesOn = Current is { } open && (open != asked || _inHand == _next.Best?.Check) && _findings.Beliefs.Stops.Count <= before.Stops.Count;
        if (goesOn) Ask();
        else Take(_next.Best);
    }

    private void LeaveOpen()
    {
        if (Current is { } item) _left.Add(item);
        if (Current is null) Take(_inHand == _next.Best?.Check ? _next.Alternatives is [var other, ..] ? other : null : _next.Best);
        else Ask();
    }

    private void Take(RecommendedCheck? check)
    {
        _inHand = check?.Check;
        _left.Clear();
        if (check is null)
        {
            Say("");
            if (!_onSite && CallPlan().Emergency is { Stands: true } emergency) CallText.WriteEmergency(_terminal.Console, emergency);
            else if (!_onSite) Say("Nothing more is worth asking. end says what to tell, agree and bring.");
            else Say("No check is worth its cost now: prove the stove and sign off. missing says what is still asked for; end closes.");
            return;
        }

        Say("");
        Say($"Next: {check.Name}");
        if (check.Minutes > 0) Say($"  {check.Minutes:0.#} min, cost {check.Cost:0.##}. {check.Because}");
        else Say($"  {check.Because}");
        var first = Preparation.For(_findings.Catalogue.Check(check.Check)?.Needs ?? CheckNeeds.None, _findings.Situation.MadeSafe);
        foreach (var step in first) Say($"  First: {step}");
        foreach (var caution in check.Cautions.Except(first)) Say($"  Caution: {caution}");
        Ask();
    }

    private void Ask()
    {
        switch (Current)
        {
            case SignItem sign:
                Say($"  {sign.Sign.Question}");
                for (var o = 0; o < sign.Sign.Outcomes.Count; o++) Say($"    {o + 1}  {sign.Sign.Outcomes[o].Words}");
                break;
            case ReadItem read:
                var shown = new Shown(read.Observable.Measure, _units);
                var healthy = read.Band is { } band ? $" (healthy {shown.NumberText(band.Low)} … {shown.Text(band.High)})" : "";
                Say($"  {read.Observable.Place.Replace('-', ' ')}, {MeasureUnits.Name(read.Observable.Measure)}, {ConditionText.Format(read.Observable.Condition)}{healthy}: number and unit?");
                break;
            case SafeItem safe: Say($"  {EnumWords.Of(safe.Step).Replace('-', ' ')}? yes when it is"); break;
            case DeedItem deed: Say($"  {deed.Words}: done when it is"); break;
            default: break;
        }
    }

    private void SayChoices()
    {
        RecommendedCheck[] all = _next.Best is { } best ? [best, .. _next.Alternatives] : [.. _next.Alternatives];
        for (var c = 0; c < all.Length; c++) Say($"  {c + 1}  {all[c].Name} ({all[c].Minutes:0.#} min, in all {all[c].ExpectedTotal:0}). {all[c].Because}");
        Say(all.Length == 0 ? "Nothing else is worth its cost now." : "take N chooses one; find WORDS looks for any other check.");
    }

    private void TakeChoice(string which)
    {
        RecommendedCheck[] all = _next.Best is { } best ? [best, .. _next.Alternatives] : [.. _next.Alternatives];
        var chosen = int.TryParse(which, out var n) ? all.ElementAtOrDefault(n - 1) : all.FirstOrDefault(c => c.Check == which) ?? Chosen(which);
        if (chosen is null) Say($"No check goes by '{which}'. or lists the choices, find WORDS looks for others.");
        else Take(chosen);
    }

    // A check of one's own choosing: the planner has no reason for it, and says none.
    private RecommendedCheck? Chosen(string id)
    {
        if (_findings.Catalogue.Check(id) is { } check)
            return new(check.Id, check.Name, check.Minutes * Tariff.Default.PerMinute + check.Cost, check.Minutes, "Your own choice.", 0, check.Cautions);
        return _findings.Catalogue.Action(id) is { } action
            ? new(action.Id, action.Name, action.Minutes * Tariff.Default.PerMinute + action.PartCost, action.Minutes, "Your own choice.", 0, action.Cautions)
            : null;
    }

    private void Find(string words)
    {
        var wanted = words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var found = _findings.Catalogue.Checks.Select(c => (c.Id, c.Name))
            .Where(c => wanted.All(w => c.Name.Contains(w, StringComparison.OrdinalIgnoreCase) || c.Id.Contains(w, StringComparison.OrdinalIgnoreCase))).ToList();
        foreach (var (id, name) in found) Say($"  {id}  {name}");
        Say(found.Count == 0 ? $"No check of this stove speaks of '{words}'." : "take ID chooses one.");
    }

    private void SaySuspects()
    {
        foreach (var s in _findings.Beliefs.Suspects.Where(s => s.Probability >= 0.01).Take(8))
            Say($"  {s.Probability,4:P0}  {s.Name}{(s.Because.Count > 0 ? $": {string.Join("; ", s.Because.Take(2).Select(b => $"{b.Words} ×{b.Factor:0.#}"))}" : "")}");
    }

    private void Undo()
    {
        if (Undoing.Last(_findings.Visit) is not { } last) Say("Nothing is left to take back.");
        else Append(last.Correction, $"Taken back: {Undoing.Said(last.Taken)}. Both stay in the file; redo restores it.");
    }

    private void Redo()
    {
        if (Undoing.Restore(_findings.Visit.Journal) is not { } restore) Say("Nothing was taken back.");
        else Append(restore, "Restored.");
    }

    private SignOffReview Review() => SignOff.Review(
        _findings.Visit, _findings.Visit.Call?.VisitKind ?? VisitKind.Breakdown, _findings.Beliefs.Comparisons, _findings.Beliefs.Stops);

    private SignOffReview Close()
    {
        var review = Review();
        Say("");
        SayStops(_findings.Beliefs.Stops);
        if (_onSite) SayMissing(review);
        else CallText.WriteOutcome(_terminal.Console, CallPlan());
        return review;
    }

    private void SayMissing(SignOffReview review)
    {
        Say(review.Decision switch
        {
            Decision.Permitted => "Sign-off: everything required is there.",
            Decision.PermittedWithLimitations => "Sign-off: possible; the report prints these limitations.",
            Decision.OutOfService => "Sign-off: the stove closes out of service.",
            Decision.Refused => $"Sign-off still lacks {review.Missing.Count}:",
        });
        foreach (var missing in review.Missing) Say($"  {missing.Words}");
        foreach (var limitation in review.Limitations) Say($"  Limitation: {limitation}");
    }

    private void SayStops(IReadOnlyList<StandingStop> stops)
    {
        foreach (var stop in stops) Stops.Write(_terminal, stop);
        if (stops.Count > 0) Say("      notice NAME writes the stop-use notice read to that person.");
    }

    private void Help()
    {
        foreach (var (form, meaning) in TypedEntry.Forms) Say($"  {form,-36}{meaning}");
        Say("  (empty line)                        leaves this one open");
        Say("  or, take N, find WORDS              other checks");
        Say("  suspects, missing                   where things stand; what sign-off lacks");
        Say("  undo, redo                          take back the last entry; restore it");
        Say("  end                                 close; everything is already in the file");
    }

    private string? Prompt()
    {
        _terminal.Out.Write("> ");
        _terminal.Out.Flush();
        return _terminal.In.ReadLine()?.Trim();
    }

    private void Say(string text) => _terminal.Console.WriteLine(text);
}
