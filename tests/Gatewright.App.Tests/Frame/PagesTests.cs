using System.Reflection;
using Bunit;
using Gatewright.App.Frame;
using Microsoft.AspNetCore.Components;

namespace Gatewright.App.Tests.Frame;

/// <summary>The router finds every page of the app, and each page tells the browser its name.</summary>
public class PagesTests
{
    [Fact]
    public void Every_component_with_an_address_is_among_the_pages_and_no_other()
    {
        IEnumerable<Type> addressed = typeof(Root).Assembly.GetTypes().Where(t => t.GetCustomAttributes<RouteAttribute>().Any());

        Assert.Equal(addressed.Select(t => t.FullName).Order(StringComparer.Ordinal), Pages.All.ExportedTypes.Select(t => t.FullName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_page_tells_its_name_once_and_again_when_it_is_another()
    {
        using var page = new BunitContext();
        page.JSInterop.Mode = JSRuntimeMode.Loose;

        IRenderedComponent<PageName> name = page.Render<PageName>(p => p.Add(n => n.Is, "Heron"));
        name.Render(p => p.Add(n => n.Is, "Heron"));
        name.Render(p => p.Add(n => n.Is, "Teal"));

        Assert.Equal(["Heron", "Teal"], page.JSInterop.Invocations["gatewright.namePage"].Select(i => i.Arguments[0]));
    }
}
