using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Signs;
using Emberwright.Reports.Wording;
using Emberwright.Stove;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>Finds signs, checks and actions by their ids, and says them in words. What is no id is taken as the words themselves.</summary>
public static class CatalogueWords
{
    private static readonly Dictionary<string, Sign> Signs = SignList.All.ToDictionary(sign => sign.Id);
    private static readonly Dictionary<string, Check> Checks = CheckList.All.ToDictionary(check => check.Id);
    private static readonly Dictionary<string, WorkAction> Actions = ActionList.All.ToDictionary(action => action.Id);

    /// <summary>The sign of an id, or null.</summary>
    public static Sign? Sign(string id) => Signs.GetValueOrDefault(id);

    /// <summary>The check of an id, or null.</summary>
    public static Check? Check(string id) => Checks.GetValueOrDefault(id);

    /// <summary>A check's name.</summary>
    public static string CheckName(string id) => Check(id) is { } check ? Say.Term(check.Name) : id;

    /// <summary>A sign's question.</summary>
    public static string Question(string sign) => Sign(sign) is { } known ? Say.Term(known.Question) : sign;

    /// <summary>A sign's outcome in words.</summary>
    public static string Outcome(string sign, string outcome) =>
        Sign(sign)?.Outcomes.FirstOrDefault(o => o.Id == outcome) is { } known ? Say.Term(known.Words) : outcome;

    /// <summary>The action of an id, or null.</summary>
    public static WorkAction? Action(string id) => Actions.GetValueOrDefault(id);

    /// <summary>An action's name.</summary>
    public static string ActionName(string action) => Action(action) is { } known ? Say.Term(known.Name) : action;

    /// <summary>The cleaning that a service of this area is.</summary>
    public static Check? CleaningOf(Area area) => Check($"clean-{EnumWords.Of(area)}");

    /// <summary>The service area that an action belongs to, or null when it is none of the four.</summary>
    public static Area? AreaOf(string action) =>
        ServiceAreas.InOrder.Select(area => (Area?)area).FirstOrDefault(area => CleaningOf(area!.Value)?.Action == action);
}
