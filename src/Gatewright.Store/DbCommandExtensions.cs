using System.Data.Common;

namespace Gatewright.Store;

/// <summary>Parameters of commands, the same way on every engine.</summary>
internal static class DbCommandExtensions
{
    public static void Add(this DbCommand command, string name, object value)
    {
        DbParameter parameter = command.CreateParameter();
        parameter.ParameterName = name;
        parameter.Value = value;
        command.Parameters.Add(parameter);
    }
}
