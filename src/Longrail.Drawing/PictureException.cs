namespace Longrail.Drawing;

/// <summary>A picture could not be made or written; the message says why and what would be right.</summary>
public sealed class PictureException : Exception
{
    /// <summary>An unnamed failure.</summary>
    public PictureException()
    {
    }

    /// <summary>A failure with its reason.</summary>
    public PictureException(string message)
        : base(message)
    {
    }

    /// <summary>A failure with its reason and what lies under it.</summary>
    public PictureException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
