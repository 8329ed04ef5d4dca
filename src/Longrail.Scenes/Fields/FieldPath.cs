namespace Longrail.Scenes.Fields;

/// <summary>A path to a field, taken step by step: "stroke.tip.right", "balls.9.x", "balls[1].x".</summary>
/// <param name="rest">The path, or what is left of it.</param>
internal readonly struct FieldPath(string rest)
{
    /// <summary>Whether nothing is left.</summary>
    public bool IsEmpty => rest.Length == 0;

    /// <summary>The first step; a place in a list keeps its brackets, as in "[1]".</summary>
    public string First => rest[..FirstLength];

    /// <summary>What follows the first step.</summary>
    public FieldPath Rest
    {
        get
        {
            int end = FirstLength;
            if (end < rest.Length && rest[end] == '.')
                end++;
            return new FieldPath(rest[end..]);
        }
    }

    private int FirstLength
    {
        get
        {
            // A step ends at a point or where a bracket opens, but "[1]" is a step by itself.
            for (int i = 0; i < rest.Length; i++)
            {
                if (rest[i] == '.' || (rest[i] == '[' && i > 0))
                    return i;
            }

            return rest.Length;
        }
    }
}
