namespace Longrail.Workbench.Tables;

/// <summary>How a change of the table counts among the steps that can be taken back.</summary>
internal enum TableStep
{
    /// <summary>A step of its own.</summary>
    Add,

    /// <summary>Goes on with the last step, as one nudge after another does.</summary>
    GoOn,

    /// <summary>Only tried, in the middle of a drag.</summary>
    Try,

    /// <summary>Comes from walking along the steps.</summary>
    Walk,
}
