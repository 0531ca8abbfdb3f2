namespace Emberwright.Field.Visiting;

/// <summary>How far a step of the visit is.</summary>
public enum HowFar
{
    /// <summary>Nothing done yet.</summary>
    ToDo,
    /// <summary>Begun.</summary>
    Doing,
    /// <summary>Done.</summary>
    Done,
}

/// <summary>One step of the order of work, as the strip at the top shows it.</summary>
/// <param name="Id">Id of its section on the page.</param>
/// <param name="Name">Its heading.</param>
/// <param name="Short">Its name in the strip.</param>
/// <param name="Progress">How far it is.</param>
public sealed record Step(string Id, string Name, string Short, HowFar Progress);

/// <summary>A <see cref="HowFar"/> as people see and hear it.</summary>
public static class HowFarMark
{
    /// <summary>In words.</summary>
    public static string Words(this HowFar progress) => progress switch
    {
        HowFar.ToDo => T("Step.to-do"),
        HowFar.Doing => T("Step.under-way"),
        HowFar.Done => T("common.done"),
    };

    /// <summary>The drawn mark's address on the page.</summary>
    public static string Shape(this HowFar progress) => progress switch
    {
        HowFar.ToDo => "#todo",
        HowFar.Doing => "#doing",
        HowFar.Done => "#done",
    };
}
