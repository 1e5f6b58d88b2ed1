using System.Text.Json.Serialization;
using Gatewright.Server.Accounts;
using Gatewright.Server.Boats;
using Gatewright.Server.Members;
using Gatewright.Server.Syncing;
using Microsoft.AspNetCore.Mvc;

namespace Gatewright.Server;

/// <summary>What the server reads and writes as JSON, generated at build time.</summary>
[JsonSourceGenerationOptions(System.Text.Json.JsonSerializerDefaults.Web)]
[JsonSerializable(typeof(string[]))]
[JsonSerializable(typeof(SignInRequest))]
[JsonSerializable(typeof(JoinRequest))]
[JsonSerializable(typeof(SecretRequest))]
[JsonSerializable(typeof(InvitationSeen))]
[JsonSerializable(typeof(RenameRequest))]
[JsonSerializable(typeof(PasswordRequest))]
[JsonSerializable(typeof(ConfirmRequest))]
[JsonSerializable(typeof(Session))]
[JsonSerializable(typeof(PasskeyRequest))]
[JsonSerializable(typeof(PasskeySeen[]))]
[JsonSerializable(typeof(BoatListed[]))]
[JsonSerializable(typeof(IReadOnlyList<MemberSeen>))]
[JsonSerializable(typeof(RoleRequest))]
[JsonSerializable(typeof(InviteRequest))]
[JsonSerializable(typeof(InvitationMade))]
[JsonSerializable(typeof(InvitationListed[]))]
[JsonSerializable(typeof(SignInListed[]))]
[JsonSerializable(typeof(PushAnswer))]
[JsonSerializable(typeof(ProblemDetails))]
[JsonSerializable(typeof(HttpValidationProblemDetails))]
internal sealed partial class ServerJson : JsonSerializerContext;
