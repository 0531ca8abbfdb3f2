namespace Emberwright.Field.Visiting;

/// <summary>How far a step of the visit is.</summary>
public enum Progress
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
public sealed record Step(string Id, string Name, string Short, Progress Progress);

/// <summary>A <see cref="Progress"/> as people see and hear it.</summary>
public static class ProgressMark
{
    /// <summary>In words.</summary>
    public static string Words(this Progress progress) => progress switch
    {
        Progress.ToDo => "to do",
        Progress.Doing => "under way",
        Progress.Done => "done",
    };

    /// <summary>The drawn mark's address on the page.</summary>
    public static string Shape(this Progress progress) => progress switch
    {
        Progress.ToDo => "#todo",
        Progress.Doing => "#doing",
        Progress.Done => "#done",
    };
}
