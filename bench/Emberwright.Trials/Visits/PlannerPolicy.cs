using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Planning;
using Emberwright.Diagnosis.Safety;
using Emberwright.Stove.Faults;

namespace Emberwright.Trials.Visits;

/// <summary>
/// Does what the planner recommends: questions on the telephone first, then on site until it recommends nothing more. Where a
/// safety stop stands it does what finds its cause, and what releases it once something has been mended. After everything that
/// changes the stove it is started, as by the other policies, and the visit ends when it runs and no stop stands.
/// </summary>
internal static class PlannerPolicy
{
    private const int MostQuestions = 8;
    private const int Most = 40;

    /// <summary>Told of each step's beliefs and recommendation; for looking into one visit.</summary>
    public static Action<Beliefs, NextCheck>? Trace { get; set; }

    /// <summary>Attends.</summary>
    public static Ending Go(Attendance visit) => new Course(visit).Go();

    private sealed class Course(Attendance visit)
    {
        private readonly Catalogue _catalogue = visit.Stove.Catalogue;
        private readonly Planner _planner = new(visit.Stove.Catalogue, visit.Tariff);
        private readonly List<string> _path = [];
        private readonly HashSet<(string, int)> _vain = [];
        private (Beliefs, Posterior) _beliefs;
        private int _known = -1;

        public Ending Go()
        {
            Call();
            for (var step = 0; step < Most; step++)
            {
                var (beliefs, posterior) = Believe();
                var next = _planner.Next(posterior, new Situation([.. visit.Evidence], beliefs.Stops, OnSite: true, visit.MadeSafe));
                Trace?.Invoke(beliefs, next);
                if (beliefs.Stops.Count == 0 && next.Best is null) return End(beliefs, false);
                var choice = new[] { next.Best }.Concat(next.Alternatives).OfType<RecommendedCheck>()
                    .FirstOrDefault(c => c.Check != Rules.TestRun && Can(c.Check) && !_vain.Contains((c.Check, visit.Stove.Epoch)))?.Check;
                if (beliefs.Stops.Count > 0 && choice is null) choice = Releasing(beliefs.Stops[0]);
                if (choice is null) return End(beliefs, beliefs.Stops.Count > 0);
                _path.Add(choice);
                var epoch = visit.Stove.Epoch;
                Do(choice);
                if (visit.Stove.Epoch > epoch && visit.Prove() && Proved() is { } ending) return ending;
            }

            var last = Believe().Beliefs;
            return End(last, last.Stops.Count > 0);
        }

        // It runs: what is left is to release the stops that stand.
        private Ending? Proved()
        {
            for (var proofs = 0; proofs < 4; proofs++)
            {
                var beliefs = Believe().Beliefs;
                if (beliefs.Stops.Count == 0) return End(beliefs, false);
                if (Releasing(beliefs.Stops[0]) is not { } release) return null;
                _path.Add(release);
                Do(release);
            }

            return null;
        }

        private void Call()
        {
            for (var asked = 0; asked < MostQuestions; asked++)
            {
                var (beliefs, posterior) = Believe();
                if (_planner.Next(posterior, new Situation(visit.Evidence, beliefs.Stops, OnSite: false, MadeSafe: false)).Best is not { } best
                    || _catalogue.Check(best.Check) is not { Kind: CheckKind.Ask } ask) return;
                _path.Add(best.Check);
                if (!visit.Do(ask)) return;
            }
        }

        private bool Can(string id) => id == Planner.MakeSafe || _catalogue.Check(id) is not null || _catalogue.Action(id) is not null;

        private void Do(string id)
        {
            var epoch = visit.Stove.Epoch;
            if (id == Planner.MakeSafe) visit.MakeSafe();
            else if (_catalogue.Check(id) is { } check)
            {
                if (!visit.Do(check) || check.Reads.Count > 0 && check.Signs.Count == 0 && !visit.Evidence.OfType<ReadingEvidence>().Any(e => e.Epoch == epoch && check.Reads.Contains(e.Observable))) _vain.Add((id, epoch));
                if (check.Action is null && Times(id) > 1) _vain.Add((id, epoch));
            }
            else Mend(_catalogue.Action(id)!);
        }

        private int Times(string id) => _path.Count(p => p == id);

        // Paid as the remedy of the likeliest of what it cures.
        private void Mend(WorkAction action)
        {
            var suspects = Believe().Beliefs.Suspects;
            var remedy = suspects.Where(s => action.Cures.Contains(s.Fault)).Select(s => _catalogue.Fault(s.Fault)).OfType<Fault>().FirstOrDefault(f => ActionList.CureOf(f.Id) == action.Id)?.Remedy;
            visit.Do(action, remedy);
        }

        // What releases a stop, once something has been done since it was called for.
        private string? Releasing(StandingStop stop)
        {
            var called = visit.Evidence.FirstOrDefault(e => e.Id == stop.Evidence);
            if (called is null || called.Epoch == visit.Stove.Epoch || SafetyRules.Find(stop.Rule) is not { } rule) return null;
            var sign = rule.Releases.OfType<SeenAgain>().Select(r => r.Sign).FirstOrDefault(s => called is SignEvidence c && (c.Sign == s || rule.Releases.OfType<SeenAgain>().Any(r => r.Sign == s && r.Answers.Contains(c.Sign))));
            var id = sign is null
                ? rule.Releases.OfType<ReadAgain>().Any() ? "room-monoxide" : null
                : _catalogue.Checks.Where(c => c.Kind != CheckKind.Ask && c.Action is null && c.Signs.Contains(sign)).MinBy(c => c.Minutes)?.Id;
            return id is null || _vain.Contains((id, visit.Stove.Epoch)) || Seen(id) ? null : id;
        }

        private bool Seen(string check) => _catalogue.Check(check) is not { } c || visit.Evidence.Any(e => e.Epoch == visit.Stove.Epoch && (e is SignEvidence s && c.Signs.Contains(s.Sign) || e is ReadingEvidence r && c.Reads.Contains(r.Observable)));

        private (Beliefs Beliefs, Posterior Posterior) Believe()
        {
            if (_known != visit.Evidence.Count)
            {
                _known = visit.Evidence.Count;
                var progress = Diagnose.Infer(visit.Stove.Case, visit.Evidence, _catalogue);
                _beliefs = (progress.Beliefs!, progress.Posterior!);
            }

            return _beliefs;
        }

        private Ending End(Beliefs beliefs, bool stopped) => new(
            stopped,
            beliefs.Suspects.Where(s => s.Fault != Suspect.Unlisted).OrderByDescending(s => s.AsFound).Take(3).Any(s => visit.Original.Contains(s.Fault)),
            _path);
    }
}
