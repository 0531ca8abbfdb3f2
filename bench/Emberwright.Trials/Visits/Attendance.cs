// What does each thing done on a visit cost, and what does it change?
// Equations: look or measurement (minutes + 1 turning to it + 1 unplugging where needed + 4 opening panels, once + 20 lighting a fire,
//            once an epoch)·rate + its own cost; remedy minutes·rate + part + 90 where the part is not on the van; seeing whether it runs
//            2 minutes;
//            making safe 10 minutes, once, before panels are opened.
// Symbols: rate cost of a minute.
// Validity: every policy pays by the same rules.
// Assumptions: those of the planner's tariff; the way there is the same for all and left out.
// Source: from memory, no source.
// Worked: looking at the pot, 2 minutes: (2 + 1)·1.25 = 3.75.
using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Planning;
using Emberwright.Stove.Faults;
using Emberwright.Trials.Generator;

namespace Emberwright.Trials.Visits;

/// <summary>One policy's visit to one hidden stove: what it has cost, learned, changed.</summary>
internal sealed class Attendance
{
    private readonly Examination _look;
    private readonly string _complaint;
    private readonly HashSet<string> _original;
    private bool _opened;
    private int _litIn = -1;
    private int _next;

    /// <summary>Begins with the call.</summary>
    public Attendance(HiddenStove stove, Tariff tariff)
    {
        Stove = stove;
        Tariff = tariff;
        _look = new Examination(stove);
        _complaint = _look.Complaint();
        _original = [.. stove.Faults.Select(f => f.Id)];
        foreach (var (sign, outcome) in Customer.Says(stove, _complaint)) Evidence.Add(new SignEvidence(Id(), 0, sign, outcome));
    }

    /// <summary>The stove, as it stands now.</summary>
    public HiddenStove Stove { get; }

    /// <summary>What time, parts and trips cost.</summary>
    public Tariff Tariff { get; }

    /// <summary>The complaint as it is, in whatever words it was told.</summary>
    public string Complaint => _complaint;

    /// <summary>All that is known.</summary>
    public List<Evidence> Evidence { get; } = [];

    /// <summary>Cost so far.</summary>
    public double Cost { get; private set; }

    /// <summary>Checks done so far.</summary>
    public int Checks { get; private set; }

    /// <summary>Sound parts that were replaced.</summary>
    public int GoodPartsReplaced { get; private set; }

    /// <summary>True once the stove is off, cold and unplugged.</summary>
    public bool MadeSafe { get; private set; }

    /// <summary>Faults it had when the call came.</summary>
    public IReadOnlySet<string> Original => _original;

    /// <summary>True when it runs and nothing is left that would be complained of in the same way.</summary>
    public bool Works => _look.Works && !Stove.Fouled.Any(f => f.Symptoms.Any(s => s.Sign == Complaints.Sign && s.Outcome == _complaint && s.Probability >= 0.1));

    /// <summary>True when a fault that it came with is still there, though perhaps not the one complained of.</summary>
    public bool KeepsAFault => Stove.Faults.Any(f => _original.Contains(f.Id));

    /// <summary>Makes it safe.</summary>
    public void MakeSafe()
    {
        if (MadeSafe) return;
        MadeSafe = true;
        Cost += 10 * Tariff.PerMinute;
    }

    /// <summary>Does a check; false when it showed nothing new.</summary>
    /// <param name="check">The check.</param>
    public bool Do(Check check)
    {
        Pay(check);
        Checks++;
        var epoch = Stove.Epoch;
        var before = Evidence.Count;
        foreach (var sign in check.Signs) Evidence.Add(new SignEvidence(Id(), epoch, sign, _look.See(sign)));
        foreach (var observable in check.Reads)
            if (_look.Read(observable) is { } value && !double.IsNaN(value)) Evidence.Add(new ReadingEvidence(Id(), epoch, observable, value));
        if (check.Action is { } id && Stove.Catalogue.Action(id) is { } action) Change(action);
        return Evidence.Count > before;
    }

    /// <summary>Cures a fault, or renews a part, whether or not it was at fault.</summary>
    /// <param name="action">What is done.</param>
    /// <param name="remedy">The remedy it is paid as; null takes minutes and part of the action.</param>
    public void Do(WorkAction action, Remedy? remedy = null)
    {
        var minutes = remedy?.Minutes ?? action.Minutes;
        Cost += minutes * Tariff.PerMinute + (remedy?.PartCost ?? action.PartCost);
        var onVan = remedy?.OnVan ?? OnVan(action);
        if (action.Kind == RemedyKind.Replace && !Stove.Always($"van {action.Id}").Happens(onVan)) Cost += Tariff.SecondTrip;
        if (action.Kind == RemedyKind.Replace && !Stove.Faults.Any(f => action.Cures.Contains(f.Id))) GoodPartsReplaced++;
        Change(action);
    }

    /// <summary>Starts it to see whether it now runs, and notes what is seen; nobody is told wrongly.</summary>
    public bool Prove()
    {
        Cost += Tariff.ProveMinutes * Tariff.PerMinute;
        Evidence.Add(new SignEvidence(Id(), Stove.Epoch, Rules.RunsNow, Works ? "runs" : "same"));
        return Works;
    }

    /// <summary>Adds what leaving it undone costs.</summary>
    public void Leave(double cost) => Cost += cost;

    private void Change(WorkAction action)
    {
        Stove.Change(action.Cures, action.Redraws);
        Evidence.Add(new ActionEvidence(Id(), Stove.Epoch, action.Id));
    }

    private void Pay(Check check)
    {
        var minutes = check.Minutes + (check.Kind == CheckKind.Ask ? 0 : 1);
        if (check.Needs.HasFlag(CheckNeeds.Unplugged) || check.Needs.HasFlag(CheckNeeds.PanelsOff)) MakeSafe();
        if (check.Needs.HasFlag(CheckNeeds.Unplugged)) minutes++;
        if (check.Needs.HasFlag(CheckNeeds.PanelsOff) && !_opened)
        {
            _opened = true;
            minutes += 4;
        }

        if (check.Needs.HasFlag(CheckNeeds.Burning) && _litIn != Stove.Epoch)
        {
            _litIn = Stove.Epoch;
            minutes += 20;
        }

        Cost += minutes * Tariff.PerMinute + check.Cost;
    }

    private double OnVan(WorkAction action) => Stove.Catalogue.Faults.Where(f => action.Cures.Contains(f.Id) && f.Remedy.Kind == RemedyKind.Replace).Select(f => f.Remedy.OnVan).DefaultIfEmpty(1).Min();

    private string Id() => $"e{_next++:000}";
}
