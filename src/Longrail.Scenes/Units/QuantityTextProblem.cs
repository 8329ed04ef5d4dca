namespace Longrail.Scenes.Units;

/// <summary>What is wrong with a text that should have been a quantity.</summary>
public enum QuantityTextProblem
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>It does not begin with a number.</summary>
    NotANumber,

    /// <summary>The number is infinite, not a number, or a fraction over nothing.</summary>
    NotFinite,

    /// <summary>A number without a unit where one is needed.</summary>
    NoUnit,

    /// <summary>A unit that does not exist here.</summary>
    UnknownUnit,

    /// <summary>A unit of something else.</summary>
    WrongUnit,

    /// <summary>A word after the unit that means nothing here.</summary>
    UnknownWord,
}
