namespace Longrail.TestKit;

/// <summary>A check that did not hold. The message says what, by how much, and what was allowed.</summary>
public sealed class ExpectationException : Exception
{
    /// <summary>With a message.</summary>
    public ExpectationException(string message)
        : base(message)
    {
    }

    /// <summary>Without a message.</summary>
    public ExpectationException()
    {
    }

    /// <summary>With a message and a cause.</summary>
    public ExpectationException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
