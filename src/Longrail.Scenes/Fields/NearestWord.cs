namespace Longrail.Scenes.Fields;

/// <summary>Finds what was probably meant by a mistyped word.</summary>
public static class NearestWord
{
    // Longer texts are no slips of the pen, and comparing them would cost time for nothing.
    private const int LongestWord = 40;

    /// <summary>The word that differs least from a text, or null if none is near.</summary>
    /// <remarks>Near means: up to one change in three letters, and two changes always. A change is a letter added,
    /// lost, replaced, or swapped with its neighbour (optimal string alignment). Capitals do not count.</remarks>
    /// <param name="text">What was written.</param>
    /// <param name="words">What may be written.</param>
    public static string? Of(string text, IEnumerable<string> words)
    {
        if (text.Length is 0 or > LongestWord)
            return null;
        string? nearest = null;
        int least = Math.Max(2, text.Length / 3) + 1;
        foreach (string word in words)
        {
            int changes = Changes(text.ToLowerInvariant(), word.ToLowerInvariant());
            // All letters replaced is no resemblance.
            if (changes >= least || changes >= Math.Max(text.Length, word.Length))
                continue;
            least = changes;
            nearest = word;
        }

        return nearest;
    }

    private static int Changes(string a, string b)
    {
        int[,] table = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++)
            table[i, 0] = i;
        for (int j = 0; j <= b.Length; j++)
            table[0, j] = j;
        for (int i = 1; i <= a.Length; i++)
        {
            for (int j = 1; j <= b.Length; j++)
            {
                int replaced = table[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                int best = Math.Min(replaced, Math.Min(table[i - 1, j], table[i, j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    best = Math.Min(best, table[i - 2, j - 2] + 1);
                table[i, j] = best;
            }
        }

        return table[a.Length, b.Length];
    }
}
