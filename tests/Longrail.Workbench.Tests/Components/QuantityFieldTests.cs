using Bunit;
using Longrail.Workbench.Components.Fields;
using Microsoft.AspNetCore.Components.Web;

namespace Longrail.Workbench.Tests.Components;

/// <summary>The field of a number.</summary>
public sealed class QuantityFieldTests : BunitContext
{
    [Theory]
    [InlineData("3", "3 mph")]
    [InlineData(" 3.5 ", "3.5 mph")]
    [InlineData("2 m/s", "2 m/s")]
    [InlineData("soft", "soft")]
    public void What_is_typed_goes_out_with_its_own_unit_or_the_fields(string typed, string sent)
    {
        string? got = null;
        IRenderedComponent<QuantityField> field = Field(text => got = text);
        field.Find("input").Change(typed);
        Assert.Equal(sent, got);
    }

    [Fact]
    public void Buttons_and_arrow_keys_step_and_shift_steps_ten_times_as_far()
    {
        var got = new List<string>();
        IRenderedComponent<QuantityField> field = Field(got.Add);
        field.FindAll("button")[1].Click();
        field.FindAll("button")[0].Click();
        field.Find("input").KeyDown(new KeyboardEventArgs { Key = "ArrowUp", ShiftKey = true });
        Assert.Equal(["2.6 mph", "2.4 mph", "3.5 mph"], got);
    }

    [Fact]
    public void Its_label_names_it_and_its_buttons()
    {
        IRenderedComponent<QuantityField> field = Field(_ => { });
        Assert.Equal(field.Find("input").Id, field.Find("label").GetAttribute("for"));
        Assert.All(field.FindAll("button"), button =>
            Assert.StartsWith("Ball speed: ", button.GetAttribute("aria-label"), StringComparison.Ordinal));
    }

    private IRenderedComponent<QuantityField> Field(Action<string> onTyped) =>
        Render<QuantityField>(parameters => parameters
        .Add(field => field.Label, "Ball speed")
        .Add(field => field.Value, "2.5")
        .Add(field => field.Unit, "mph")
        .Add(field => field.Step, 0.1)
        .Add(field => field.OnTyped, onTyped));
}
