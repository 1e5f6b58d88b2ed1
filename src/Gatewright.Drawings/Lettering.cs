using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Gatewright.Drawings;

/// <summary>
/// Words on a drawing; nothing where there are none. Written by hand, because Razor keeps the tag <c>text</c> for itself.
/// </summary>
public sealed class Lettering : ComponentBase
{
    /// <summary>The words.</summary>
    [Parameter, EditorRequired]
    public required string? Text { get; set; }

    /// <summary>Where the words' base line begins, ends or has its middle.</summary>
    [Parameter, EditorRequired]
    public required Spot At { get; set; }

    /// <summary>Which of these: "start", "middle" or "end".</summary>
    [Parameter]
    public string Anchor { get; set; } = "start";

    /// <summary>Its classes.</summary>
    [Parameter]
    public string? Class { get; set; }

    /// <inheritdoc/>
    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        if (string.IsNullOrEmpty(Text))
        {
            return;
        }

        builder.OpenElement(0, "text");
        builder.AddAttribute(1, "class", Class);
        builder.AddAttribute(2, "x", Svg.N(At.X));
        builder.AddAttribute(3, "y", Svg.N(At.Y));
        builder.AddAttribute(4, "text-anchor", Anchor);
        builder.AddContent(5, Text);
        builder.CloseElement();
    }
}
