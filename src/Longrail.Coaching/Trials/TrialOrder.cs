namespace Longrail.Coaching.Trials;

/// <summary>In which order the conditions of a trial are played.</summary>
public enum TrialOrder
{
    /// <summary>There and back again (A B B A, A B C C B A), the first of each turn drawn by lot: the fewest changes,
    /// and a player who tires evenly harms all conditions alike.</summary>
    Abba,

    /// <summary>Shuffled within short blocks: nobody can guess the next one.</summary>
    Blocks,
}
