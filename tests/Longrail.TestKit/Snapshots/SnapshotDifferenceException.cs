namespace Longrail.TestKit.Snapshots;

/// <summary>A text is not what was approved.</summary>
public sealed class SnapshotDifferenceException : Exception
{
    /// <summary>An unnamed difference.</summary>
    public SnapshotDifferenceException()
    {
    }

    /// <summary>A difference, with the files to compare.</summary>
    public SnapshotDifferenceException(string message)
        : base(message)
    {
    }

    /// <summary>A difference, with what lies under it.</summary>
    public SnapshotDifferenceException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
