using Emberwright.Visits;

namespace Emberwright.Field.Visiting;

/// <summary>File names of what is handed over: day, customer, what it is.</summary>
internal static class PaperName
{
    /// <summary>The name, without anything a file system could refuse.</summary>
    public static string Of(Visit visit, string ending)
    {
        var words = $"{visit.Day:yyyy-MM-dd} {visit.Customer?.Name} {ending}".ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return string.Concat(string.Join('-', words).Where(c => char.IsLetterOrDigit(c) || c is '-' or '.'));
    }
}
