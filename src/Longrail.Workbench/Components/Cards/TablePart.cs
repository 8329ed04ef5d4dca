using Longrail.Workbench.Tables;
using Microsoft.AspNetCore.Components;

namespace Longrail.Workbench.Components.Cards;

/// <summary>A part of the page that shows the table and is drawn again whenever the table or the view of it
/// changes.</summary>
public abstract class TablePart : ComponentBase, IDisposable
{
    // While something is dragged, what is not part of the drag is drawn again this often only.
    private static readonly TimeSpan _pause = TimeSpan.FromMilliseconds(150);
    private bool _isWaiting;
    private bool _isGone;

    [Inject]
    internal OpenTable Table { get; set; } = null!;

    [Inject]
    internal BenchView View { get; set; } = null!;

    /// <summary>Whether it follows a drag at every step, and not a little behind.</summary>
    protected virtual bool FollowsDrags => true;

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Table.Changed += OnChanged;
        View.Changed += OnChanged;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _isGone = true;
        Table.Changed -= OnChanged;
        View.Changed -= OnChanged;
        GC.SuppressFinalize(this);
    }

    private void OnChanged()
    {
        if (FollowsDrags || !Table.IsTrying)
            _ = InvokeAsync(StateHasChanged);
        else if (!_isWaiting)
            _ = InvokeAsync(ChangeLaterAsync);
    }

    private async Task ChangeLaterAsync()
    {
        _isWaiting = true;
        await Task.Delay(_pause);
        _isWaiting = false;
        if (!_isGone)
            StateHasChanged();
    }
}
