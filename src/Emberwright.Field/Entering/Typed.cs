using System.Globalization;
using Emberwright.Stove.Quantities;

namespace Emberwright.Field.Entering;

/// <summary>A number while it is being typed on the pad: exactly the characters shown. It is not yet a reading.</summary>
/// <param name="Text">Digits, at most one point, a true minus in front or none; at most 8 characters beside it.</param>
public readonly record struct Typed(string Text)
{
    private const int Longest = 8;

    /// <summary>Nothing typed, but the minus of a vacuum already there when <paramref name="below"/> is true.</summary>
    public static Typed Start(bool below) => new(below ? QuantityFormat.Minus.ToString() : "");

    /// <summary>The characters as the region writes them.</summary>
    public string Shown => Local.Signs(Text.EndsWith('.') ? Text[..^1] + Local.Region.Decimal : Text);

    /// <summary>True when it reads as a number.</summary>
    public bool IsNumber => Value is not null;

    /// <summary>The number, in the unit of the instrument; null while there is none.</summary>
    public double? Value =>
        double.TryParse(Text.Replace(QuantityFormat.Minus, '-'), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value)
            ? value
            : null;

    /// <summary>Adds a digit; a leading zero gives way to it.</summary>
    public Typed Digit(char digit)
    {
        if (Unsigned.Length >= Longest) return this;
        return Unsigned == "0" ? new(Sign + digit) : new(Text + digit);
    }

    /// <summary>Adds the decimal point; a second one is ignored, and a point alone becomes "0.".</summary>
    public Typed Point() =>
        Text.Contains('.') || Unsigned.Length >= Longest ? this : new(Unsigned.Length == 0 ? Sign + "0." : Text + ".");

    /// <summary>Turns the sign round.</summary>
    public Typed TurnSign() => new(Sign.Length == 0 ? QuantityFormat.Minus + Text : Unsigned);

    /// <summary>Takes the last character off.</summary>
    public Typed Delete() => Text.Length == 0 ? this : new(Text[..^1]);

    /// <summary>Takes whatever a keyboard or a paste brings, and keeps of it what a number can hold.</summary>
    public static Typed From(string? text)
    {
        var typed = new Typed("");
        foreach (var character in text ?? "")
        {
            typed = character switch
            {
                '-' or QuantityFormat.Minus when typed.Text.Length == 0 => typed.TurnSign(),
                '.' or ',' => typed.Point(),
                >= '0' and <= '9' => typed.Digit(character),
                _ => typed,
            };
        }
        return typed;
    }

    private string Sign => Text.StartsWith(QuantityFormat.Minus) ? QuantityFormat.Minus.ToString() : "";

    private string Unsigned => Text[Sign.Length..];
}
