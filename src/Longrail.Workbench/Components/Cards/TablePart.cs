using Longrail.Workbench.Tables;
using Microsoft.AspNetCore.Components;

namespace Longrail.Workbench.Components.Cards;

/// <summary>A part of the page that shows the table and is drawn again whenever the table or the view of it
/// changes.</summary>
public abstract class TablePart : ComponentBase, IDisposable
{
    [Inject]
    internal OpenTable Table { get; set; } = null!;

    [Inject]
    internal BenchView View { get; set; } = null!;

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Table.Changed += OnChanged;
        View.Changed += OnChanged;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Table.Changed -= OnChanged;
        View.Changed -= OnChanged;
        GC.SuppressFinalize(this);
    }

    private void OnChanged() => _ = InvokeAsync(StateHasChanged);
}
