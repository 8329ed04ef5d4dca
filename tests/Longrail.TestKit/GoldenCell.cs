using System.Globalization;

namespace Longrail.TestKit;

/// <summary>One printed number of a published table.</summary>
public readonly record struct GoldenCell
{
    /// <summary>Reads a cell. A trailing asterisk is a mark whose meaning the table's header explains.</summary>
    /// <exception cref="FormatException">The cell holds no number.</exception>
    public GoldenCell(string text)
    {
        Text = text;
        Marked = text.EndsWith('*');
        string number = text.TrimEnd('*');
        if (!double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out double value))
            throw new FormatException($"\"{text}\" is not a number.");
        Value = value;
        int point = number.IndexOf('.', StringComparison.Ordinal);
        HalfUnit = 0.5 * Math.Pow(10, point < 0 ? 0 : point + 1 - number.Length);
    }

    /// <summary>As printed.</summary>
    public string Text { get; }

    /// <summary>The number.</summary>
    public double Value { get; }

    /// <summary>Half a unit of the last printed digit: how exactly the table knows the number.</summary>
    public double HalfUnit { get; }

    /// <summary>Whether an asterisk follows the number.</summary>
    public bool Marked { get; }

    /// <inheritdoc/>
    public override string ToString() => Text;
}
