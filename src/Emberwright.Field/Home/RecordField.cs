namespace Emberwright.Field.Home;

/// <summary>One member of a record as a form shows it.</summary>
/// <param name="Member">The member, as files write it.</param>
/// <param name="Label">What it is, in words.</param>
/// <param name="Type">Kind of input: text, date, tel, email.</param>
/// <param name="Lines">True for a list, one item a line.</param>
/// <param name="Hint">An example.</param>
/// <param name="Mode">Which keyboard a phone shows.</param>
/// <param name="Choices">What there is to choose from, each as files write it and in words; null for words of one's own.</param>
/// <param name="IsNumber">True for a number, with its unit or without.</param>
public sealed record RecordField(
    string Member, string Label, string Type = "text", bool Lines = false, string? Hint = null, string? Mode = null, IReadOnlyList<(string Value, string Words)>? Choices = null, bool IsNumber = false);
