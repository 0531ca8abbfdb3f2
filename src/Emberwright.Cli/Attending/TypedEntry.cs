using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Signs;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Cli.Attending;

/// <summary>What a typed line comes to: an entry, or why it is none.</summary>
/// <param name="Body">The entry to write; null when there is none.</param>
/// <param name="Said">What it was taken for, or why it was not taken.</param>
internal readonly record struct Typed(EntryBody? Body, string Said)
{
    public static Typed Refused(string why) => new(null, why);
}

/// <summary>Turns a line typed at the stove into a journal entry.</summary>
internal static class TypedEntry
{
    /// <summary>The forms, for help.</summary>
    public static readonly IReadOnlyList<(string Form, string Meaning)> Forms =
    [
        ("2", "the answer with that number"),
        ("yes, it glows", "the answer in words, when they are among those listed or known"),
        ("-12.4 Pa", "the reading asked for, with its unit; OL for an open circuit"),
        ("firebox fan only -0.03 inWC", "another reading: place, condition, number and unit"),
        ("glass: black", "something seen: what, a colon, what was found"),
        ("asked how did it begin: over weeks", "a question and its answer"),
        ("said it got worse all winter", "what the customer says"),
        ("done", "the work in hand is done; done WORDS for other work"),
        ("left WORDS because no-access", "work left undone: no-access, owner-refused, out-of-service, not-fitted"),
        ("safe unplugged", "a step of making safe"),
        ("proof hose-off passed", "a proof: hose-off, lid-open, shutdown-run-on, smoke-pencil, door-open; passed, failed, not-fitted"),
        ("code E3 means no ignition", "what the stove shows"),
        ("counter starts 4120", "what a counter shows"),
        ("part vacuum switch", "a part fitted"),
        ("notice owner's name", "the stop-use notice for the stop that stands, read to that person"),
        ("due 2027-10-01", "when to come back"),
        ("signed NAME", "the customer's signature by name; absent when nobody is there"),
        ("note WORDS", "anything else, kept as it is"),
    ];

    public static Typed Read(string line, Item? item, Findings findings)
    {
        var (verb, rest) = Split(line);
        var explicitly = verb switch
        {
            "done" => Done(rest, item, findings),
            "left" => Left(rest),
            "said" => rest.Length == 0 ? Typed.Refused("Write what the customer says behind it.") : new(new ComplaintBody(rest), Taken(Lexicon.Read(rest, findings.Case.Pattern.Id).Found, findings)),
            "asked" => Told(rest, findings),
            "note" => rest.Length == 0 ? Typed.Refused("Write the note behind it.") : new(new NoteBody(rest), "Kept as a note."),
            "safe" => EnumWords.Find<SafeStep>(rest) is { } step ? new(new SafeBody(step), "Made safe: " + EnumWords.Of(step).Replace('-', ' ') + ".") : Typed.Refused($"Steps: {EnumWords.All<SafeStep>()}."),
            "proof" => Proved(rest),
            "code" => Shown(rest),
            "counter" => Counted(rest),
            "part" => rest.Length == 0 ? Typed.Refused("Name the part behind it.") : new(new PartBody(rest, Use: "fitted"), "Part fitted."),
            "notice" => Notice(rest, findings),
            "due" => DateOnly.TryParseExact(rest, "yyyy-MM-dd", out var day) ? new(new DueBody(day), "Due again then.") : Typed.Refused("Write the day as year, month, day: due 2027-10-01."),
            "signed" => rest.Length == 0 ? Typed.Refused("Write who signed behind it.") : new(new SignatureBody(Role.Customer, rest), "Signed."),
            "absent" when rest.Length == 0 => new(new SignatureBody(Role.Customer, Absent: true), "Nobody was there to sign; the report says so."),
            _ => (Typed?)null,
        };
        if (explicitly is { } typed) return typed;
        if (item is SignItem sign && Chosen(line, sign) is { } outcome) return Answer(sign, outcome.Id, null);
        if (item is SafeItem safe && IsYes(line)) return new(new SafeBody(safe.Step), "Made safe: " + EnumWords.Of(safe.Step).Replace('-', ' ') + ".");
        if (item is DeedItem && IsYes(line)) return Done("", item, findings);
        var reading = TypedReading.Read(line, item as ReadItem, findings.Catalogue, findings.Case.Pattern, out var problem);
        if (reading is not null) return new(reading, $"{reading.Place.Replace('-', ' ')}, {Stove.Quantities.ConditionText.Format(reading.Condition)}: {reading.Written}");
        if (problem is not null) return Typed.Refused(problem);
        if (line.IndexOf(':', StringComparison.Ordinal) is var colon and > 0) return Seen(line[..colon].Trim(), line[(colon + 1)..].Trim(), findings);
        return InWords(line, item, findings);
    }

    private static Typed InWords(string line, Item? item, Findings findings)
    {
        var pattern = findings.Case.Pattern.Id;
        if (item is SignItem { Sign: var sign } asked
            && Lexicon.Read(sign.Topics is [var topic, ..] ? topic : sign.Question, line, pattern).Found.Where(f => f.Sign == sign.Id).Select(f => f.Outcome).FirstOrDefault() is { } known)
            return Answer(asked, known, line);
        var found = Lexicon.Read(line, pattern).Found;
        return found.Count > 0
            ? new(new ObservationBody("seen", line), Taken(found, findings))
            : Typed.Refused(item is null
                ? "This says nothing that is known here. Type help for the forms, or note WORDS to keep it as it is."
                : "This is not one of the answers. Type its number, an empty line to leave it open, help for the forms, or note WORDS to keep it as it is.");
    }

    private static Outcome? Chosen(string line, SignItem item)
    {
        var outcomes = item.Sign.Outcomes;
        if (int.TryParse(line, out var number)) return number >= 1 && number <= outcomes.Count ? outcomes[number - 1] : null;
        if (outcomes.FirstOrDefault(o => o.Id.Equals(line, StringComparison.OrdinalIgnoreCase)) is { } same) return same;
        var alike = outcomes.Where(o => o.Words.Equals(line, StringComparison.OrdinalIgnoreCase)).ToList();
        if (alike.Count == 0 && line.Length > 2) alike = [.. outcomes.Where(o => o.Words.StartsWith(line, StringComparison.OrdinalIgnoreCase))];
        return alike is [var one] ? one : null;
    }

    private static Typed Answer(SignItem item, string outcome, string? words) => new(
        item.Told ? new AnswerBody(item.Sign.Id, outcome, words) : new ObservationBody(item.Sign.Id, outcome, Words: words),
        $"{item.Sign.Question} {item.Sign.Outcomes[item.Sign.IndexOf(outcome)].Words}.");

    private static Typed Told(string rest, Findings findings)
    {
        var colon = rest.IndexOf(':', StringComparison.Ordinal);
        if (colon <= 0 || colon == rest.Length - 1) return Typed.Refused("Write the question, a colon, and the answer: asked how did it begin: over weeks.");
        var (question, answer) = (rest[..colon].Trim(), rest[(colon + 1)..].Trim());
        return new(new AnswerBody(question, answer), Taken(Lexicon.Read(question, answer, findings.Case.Pattern.Id).Found, findings));
    }

    private static Typed Seen(string what, string found, Findings findings) => found.Length == 0
        ? Typed.Refused("Write what was found behind the colon: glass: black.")
        : new(new ObservationBody(what, found), Taken(Lexicon.Read(what, found, findings.Case.Pattern.Id).Found, findings));

    private static Typed Done(string words, Item? item, Findings findings)
    {
        if (words.Length == 0)
            return item switch
            {
                DeedItem deed => new(new ActionBody(deed.Action), $"Done: {deed.Words}."),
                SafeItem safe => new(new SafeBody(safe.Step), "Made safe: " + EnumWords.Of(safe.Step).Replace('-', ' ') + "."),
                _ => Typed.Refused("Nothing in hand is to be done. Write what was done: done emptied the tee."),
            };
        var action = findings.Catalogue.Action(words) ?? Lexicon.ReadAction(words, findings.Case.Pattern.Id);
        return new(new ActionBody(action?.Id ?? words, Outcome: action is null || action.Id == words ? null : words),
            action is null ? "Kept in your words; the suspects are weighed as if it changed nothing." : $"Done: {action.Name}.");
    }

    private static Typed Left(string rest)
    {
        var at = rest.LastIndexOf(" because ", StringComparison.Ordinal);
        return at > 0 && EnumWords.Find<NotDoneReason>(rest[(at + 9)..]) is { } reason
            ? new(new ActionBody(rest[..at].Trim(), Done: false, Reason: reason), "Left undone; the report says so.")
            : Typed.Refused($"Write what was left and why: left vent sweeping because no-access. Reasons: {EnumWords.All<NotDoneReason>()}.");
    }

    private static Typed Proved(string rest)
    {
        var (which, how) = Split(rest);
        return EnumWords.Find<Proof>(which) is { } proof && EnumWords.Find<ProofOutcome>(how) is { } outcome
            ? new(new ProofBody(proof, outcome), $"Proof {which}: {EnumWords.Of(outcome).Replace('-', ' ')}.")
            : Typed.Refused($"Write the proof and how it ended: proof hose-off passed. Proofs: {EnumWords.All<Proof>()}; ends: {EnumWords.All<ProofOutcome>()}.");
    }

    private static Typed Shown(string rest)
    {
        if (rest.Length == 0) return Typed.Refused("Write the code as the stove shows it: code E3 means no ignition.");
        var at = rest.IndexOf(" means ", StringComparison.Ordinal);
        return at < 0 ? new(new CodeBody(rest), "Code kept; say what it means for the suspects to use it.") : new(new CodeBody(rest[..at].Trim(), rest[(at + 7)..].Trim()), "Code kept with its meaning.");
    }

    private static Typed Counted(string rest)
    {
        var (name, value) = Split(rest);
        return value.Length == 0 ? Typed.Refused("Write the counter and what it shows: counter starts 4120.") : new(new CounterBody(name, value), "Counter kept.");
    }

    private static Typed Notice(string readTo, Findings findings) => findings.Beliefs.Stops is [var stop, ..]
        ? new(new NoticeBody(stop.Words, stop.ReleasedBy, readTo.Length == 0 ? null : readTo), "Stop-use notice written.")
        : Typed.Refused("No safety stop stands, so there is nothing to give notice of.");

    private static string Taken(IReadOnlyList<SignOutcome> found, Findings findings)
    {
        var said = found.Select(f => findings.Catalogue.Sign(f.Sign) is { } sign ? $"{sign.Question} {sign.Outcomes[sign.IndexOf(f.Outcome)].Words}" : f.Outcome).ToList();
        return said.Count == 0 ? "Kept in your words; nothing in them moves the suspects." : $"Taken as: {string.Join("; ", said)}.";
    }

    private static bool IsYes(string line) => line.ToLowerInvariant() is "y" or "yes" or "1" or "ok";

    private static (string Verb, string Left) Split(string line)
    {
        var space = line.IndexOf(' ', StringComparison.Ordinal);
        return space < 0 ? (line.ToLowerInvariant(), "") : (line[..space].ToLowerInvariant(), line[(space + 1)..].Trim());
    }
}
