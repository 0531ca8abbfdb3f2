using Emberwright.Stove;

namespace Emberwright.Diagnosis.Checks;

/// <summary>The few forms in which the catalogue's checks are written down. All minutes and costs: from memory, no source.</summary>
internal static class Writing
{
    /// <summary>Needs of a look with the fire out.</summary>
    public const CheckNeeds ColdOnSite = CheckNeeds.OnSite | CheckNeeds.Cold;

    /// <summary>Needs of work behind panels.</summary>
    public const CheckNeeds Opened = ColdOnSite | CheckNeeds.Unplugged | CheckNeeds.PanelsOff;

    /// <summary>Needs of a live reading behind panels.</summary>
    public const CheckNeeds Live = ColdOnSite | CheckNeeds.PanelsOff | CheckNeeds.Powered;

    /// <summary>Needs of a reading with the blower on and no fire.</summary>
    public const CheckNeeds FanOnly = ColdOnSite | CheckNeeds.Powered;

    /// <summary>Needs of a reading on a fire.</summary>
    public const CheckNeeds Fire = CheckNeeds.OnSite | CheckNeeds.Powered | CheckNeeds.Burning;

    /// <summary>A question that can be asked by telephone.</summary>
    public static Check Ask(string id, string name, double minutes, params string[] signs) =>
        new(id, name, CheckKind.Ask, minutes, 0, [], CheckNeeds.None, [], signs, [], []);

    /// <summary>A look.</summary>
    public static Check Look(string id, string name, double minutes, CheckNeeds needs, string[] signs, params string[] cautions) =>
        new(id, name, CheckKind.Look, minutes, 0, cautions, needs, [], signs, [], []);

    /// <summary>A reading.</summary>
    public static Check Measure(string id, string name, double minutes, CheckNeeds needs, Observable[] reads, params string[] cautions) =>
        new(id, name, CheckKind.Measure, minutes, 0, cautions, needs, reads, [], [], []);

    /// <summary>A trial.</summary>
    public static Check Try(string id, string name, double minutes, CheckNeeds needs, string[] signs, params string[] cautions) =>
        new(id, name, CheckKind.Try, minutes, 0, cautions, needs, [], signs, [], []);

    /// <summary>Cleaning, which shows what was there and cures it.</summary>
    public static Check Clean(string actionId, string[] signs, Observable[]? reads = null)
    {
        var action = ActionList.All.Single(a => a.Id == actionId);
        return new(actionId, action.Name, CheckKind.Clean, action.Minutes, action.PartCost, action.Cautions, Opened, reads ?? [], signs,
            action.Cures, action.Patterns, actionId);
    }

    /// <summary>Volts across a part while the board calls for feed, no fire.</summary>
    public static Observable Volts(string component) => new(Stove.Measure.Voltage, component, Condition.FanOnly);

    /// <summary>Ohms of a part alone, plug out.</summary>
    public static Observable Ohms(string component) => new(Stove.Measure.Resistance, component, Condition.BlowerOff);

    /// <summary>Current of a part while the board calls.</summary>
    public static Observable Amps(string component) => new(Stove.Measure.Current, component, Condition.FanOnly);
}
