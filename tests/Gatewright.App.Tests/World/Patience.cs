using System.Runtime.CompilerServices;
using Bunit;

namespace Gatewright.App.Tests.World;

/// <summary>How long a test waits for a page: on a busy machine one may take seconds over what takes a moment elsewhere.</summary>
internal static class Patience
{
    [ModuleInitializer]
    internal static void Wait() => BunitContext.DefaultWaitTimeout = TimeSpan.FromSeconds(30);
}
