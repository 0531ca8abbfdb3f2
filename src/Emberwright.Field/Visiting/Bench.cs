using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Planning;
using Emberwright.Field.Store;
using Emberwright.Reports.FromVisit;
using Emberwright.Stove;
using Emberwright.Visits;
using Emberwright.Visits.Journal;
using Microsoft.JSInterop;

namespace Emberwright.Field.Visiting;

/// <summary>
/// The visit being worked on: what it comes to, what the engine concludes, and the last step for taking back.
/// It stays the same while one moves between the visit's pages.
/// </summary>
public sealed class Bench : IDisposable
{
    private readonly Book book;
    private readonly OwnRates rates;
    private readonly ILogger<Bench> log;
    private CancellationTokenSource thinking = new();

    /// <summary>Sets up the bench; what other tabs write to its visit is taken in at once.</summary>
    public Bench(Book book, OwnRates rates, ILogger<Bench> log)
    {
        (this.book, this.rates, this.log) = (book, rates, log);
        book.Changed += Follow;
    }

    private void Follow()
    {
        if (Visit is not null && book.Find(Visit.Id) is { } held && !ReferenceEquals(held.Journal, Visit.Journal)) Fold(held);
    }

    /// <summary>Raised when the visit or what is concluded from it changed.</summary>
    public event Action? Changed;

    /// <summary>The visit; null until one is opened.</summary>
    public Visit? Visit { get; private set; }

    /// <summary>What the engine concluded last; null while it first thinks, and for a stove of no known pattern.</summary>
    public Findings? Findings { get; private set; }

    /// <summary>What the telephone is still good for: questions, advice, what to bring; null until the engine has thought.</summary>
    public CallPlan? Plan { get; private set; }

    /// <summary>What kept the engine from concluding, in words; null when nothing did.</summary>
    public string? Trouble { get; private set; }

    /// <summary>True while the engine works on what was recorded since.</summary>
    public bool Thinking { get; private set; }

    /// <summary>How long the last conclusion took.</summary>
    public TimeSpan Took { get; private set; }

    /// <summary>What the last step recorded, in words; null when there is nothing to take back.</summary>
    public string? LastSaid { get; private set; }

    private IReadOnlyList<Entry> last = [];

    /// <summary>Puts a visit on the bench.</summary>
    /// <returns>False when no visit of that id is on this phone.</returns>
    public bool Open(string id)
    {
        if (Visit?.Id == id && book.Find(id)?.Journal == Visit.Journal) return true;
        if (book.Find(id) is not { } held) return false;
        if (Visit?.Id != id)
        {
            (Findings, Plan) = (null, null);
            (last, LastSaid) = ([], null);
        }
        Fold(held);
        return true;
    }

    /// <summary>Records one fact.</summary>
    /// <param name="body">The fact.</param>
    /// <param name="said">It in words, for the line that offers to take it back.</param>
    public Task<bool> Write(EntryBody body, string said) => Write([body], said);

    /// <summary>Records facts that belong to one step; they are written, and taken back, together.</summary>
    /// <param name="bodies">The facts, in order.</param>
    /// <param name="said">The step in words.</param>
    /// <returns>True once it is on the disk; false when the phone refused, which is said where the last step stands.</returns>
    public async Task<bool> Write(IReadOnlyList<EntryBody> bodies, string said)
    {
        try
        {
            last = await book.Write(Visit!.Id, bodies);
        }
        catch (JSException reason)
        {
            log.LogWarning("The store refused: {Reason}", reason.Message);
            Tell(StoreTrouble.Words(reason.Message));
            return false;
        }
        LastSaid = said;
        Fold(book.Find(Visit.Id)!);
        return true;
    }

    /// <summary>Says something where the last step stands, with nothing to take back.</summary>
    public void Tell(string words)
    {
        (last, LastSaid) = ([], words);
        Changed?.Invoke();
    }

    /// <summary>True when the last step can be taken back from where it is said. A seal cannot: what comes after it is an addendum.</summary>
    public bool CanUndo => last.Count > 0 && last[^1].Body is not SealBody;

    /// <summary>Takes the last step back.</summary>
    public async Task Undo()
    {
        if (!CanUndo) return;
        var step = last;
        (last, LastSaid) = ([], null);
        await Write([.. step.Select(entry => Book.Withdrawal(entry.Id))], T("Bench.taken-back"));
    }

    /// <summary>Takes any entry back.</summary>
    public async Task TakeBack(string entry)
    {
        await Write([Book.Withdrawal(entry)], T("Bench.taken-back"));
    }

    /// <summary>Closes the visit: a seal over everything recorded and every figure shown.</summary>
    public Task<bool> SignOff() => Write(
        Seal.Over(Visit!.Journal, Engine.Version, SealedFigures.Of(Findings?.Beliefs, Visit)), T("common.signed-off"));

    private void Fold(BookVisit held)
    {
        if (!ReferenceEquals(Visit, held.Visit))
        {
            Visit = held.Visit;
            _ = Conclude(Visit);
        }
        Changed?.Invoke();
    }

    private async Task Conclude(Visit visit)
    {
        // Said before anything is awaited: whoever looks now sees that the last conclusion is being overtaken.
        (Thinking, Trouble) = (true, null);
        await thinking.CancelAsync();
        thinking.Dispose();
        thinking = new CancellationTokenSource();
        var token = thinking.Token;
        try
        {
            await rates.Open();
            var began = TimeProvider.System.GetTimestamp();
            await foreach (var findings in Engine.Find(visit, rates.Of, token))
            {
                token.ThrowIfCancellationRequested();
                Findings = findings;
                Took = TimeProvider.System.GetElapsedTime(began);
                Changed?.Invoke();
                await Task.Delay(1, token);
                if (visit.Seal is null) Plan = Engine.Plan(findings);
            }
            token.ThrowIfCancellationRequested();
            Thinking = false;
            Changed?.Invoke();
            if (Findings is not null && visit.Seal is null) await Improve(Findings, token);
        }
        catch (OperationCanceledException)
        {
        }
        catch (Exception reason) when (reason is ArgumentException or InputException)
        {
            Stop(reason.Message);
        }
        catch (Exception reason)
        {
            // Whatever stops the engine must not stop the work: everything can still be recorded, signed and handed over.
            log.LogError(reason, "The engine stopped on visit {Visit}", visit.Id);
            Stop(T("Bench.the-engine-could-not-conclude-from"));
        }
    }

    private async Task Improve(Findings concluded, CancellationToken token)
    {
        var shown = concluded.NextCheck;
        await foreach (var better in Engine.Improve(concluded, token))
        {
            token.ThrowIfCancellationRequested();
            Findings = better;
            if (Same(shown, better.NextCheck)) continue;
            shown = better.NextCheck;
            Changed?.Invoke();
        }
    }

    private static bool Same(NextCheck one, NextCheck other) =>
        one.Best?.Check == other.Best?.Check && one.Best?.Because == other.Best?.Because && one.Alternatives.Select(a => a.Check).SequenceEqual(other.Alternatives.Select(a => a.Check));

    private void Stop(string why)
    {
        (Findings, Plan, Trouble, Thinking) = (null, null, why, false);
        Changed?.Invoke();
    }

    /// <summary>Stops the engine.</summary>
    public void Dispose()
    {
        book.Changed -= Follow;
        thinking.Dispose();
    }
}
