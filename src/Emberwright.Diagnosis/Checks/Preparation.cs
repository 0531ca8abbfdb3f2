using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Checks;

/// <summary>What must be so before a check, said as it is done: the making-safe step first.</summary>
public static class Preparation
{
    /// <summary>The sentences, in the order they are done; none for what can be asked from afar.</summary>
    /// <param name="needs">What the check needs.</param>
    /// <param name="madeSafe">True when off, burnt out, unplugged and proved dead is already recorded.</param>
    public static IReadOnlyList<string> For(CheckNeeds needs, bool madeSafe)
    {
        var said = new List<string>();
        if (needs.HasFlag(CheckNeeds.Unplugged)) said.Add(madeSafe ? "Still unplugged and dead? Prove it again if anybody was at the plug." : Cautions.MakeSafe);
        else if (needs.HasFlag(CheckNeeds.Cold)) said.Add("Fire out, stove cold.");
        if (needs.HasFlag(CheckNeeds.PanelsOff)) said.Add("Panels off.");
        if (needs.HasFlag(CheckNeeds.Powered) && !needs.HasFlag(CheckNeeds.Burning)) said.Add("Plugged in, the board calling; live parts are within reach.");
        if (needs.HasFlag(CheckNeeds.Burning)) said.Add("A fire on high, and only if it is safe to burn one: CO instrument running.");
        return said;
    }
}
