using Gatewright.Architecture.Tests.Samples.Order.Early;

namespace Gatewright.Architecture.Tests.Samples.Order;

public static class RootUsesFolder
{
    public static string Name => nameof(InBody) + typeof(InBody).Name;
}
