using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace Gatewright.Store.Postgres.Migrations
{
    /// <inheritdoc />
    public partial class Accounts : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropPrimaryKey(
                name: "PK_invitations",
                table: "invitations");

            migrationBuilder.AddColumn<string>(
                name: "Invitation",
                table: "invitations",
                type: "character varying(64)",
                maxLength: 64,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "Label",
                table: "invitations",
                type: "character varying(200)",
                maxLength: 200,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "MadeBy",
                table: "invitations",
                type: "character varying(64)",
                maxLength: 64,
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "MadeTicks",
                table: "invitations",
                type: "bigint",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddPrimaryKey(
                name: "PK_invitations",
                table: "invitations",
                columns: new[] { "Club", "Invitation" });

            migrationBuilder.CreateTable(
                name: "data_protection_keys",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    FriendlyName = table.Column<string>(type: "text", nullable: true),
                    Xml = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_data_protection_keys", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "sign_ins",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    AtTicks = table.Column<long>(type: "bigint", nullable: false),
                    AccountId = table.Column<string>(type: "text", nullable: true),
                    Club = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: true),
                    Outcome = table.Column<string>(type: "character varying(32)", maxLength: 32, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_sign_ins", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "snapshots",
                columns: table => new
                {
                    Club = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    Number = table.Column<long>(type: "bigint", nullable: false),
                    Bytes = table.Column<byte[]>(type: "bytea", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_snapshots", x => x.Club);
                });

            migrationBuilder.CreateIndex(
                name: "IX_invitations_SecretHash",
                table: "invitations",
                column: "SecretHash",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_sign_ins_AccountId",
                table: "sign_ins",
                column: "AccountId");

            migrationBuilder.CreateIndex(
                name: "IX_sign_ins_Club",
                table: "sign_ins",
                column: "Club");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "data_protection_keys");

            migrationBuilder.DropTable(
                name: "sign_ins");

            migrationBuilder.DropTable(
                name: "snapshots");

            migrationBuilder.DropPrimaryKey(
                name: "PK_invitations",
                table: "invitations");

            migrationBuilder.DropIndex(
                name: "IX_invitations_SecretHash",
                table: "invitations");

            migrationBuilder.DropColumn(
                name: "Invitation",
                table: "invitations");

            migrationBuilder.DropColumn(
                name: "Label",
                table: "invitations");

            migrationBuilder.DropColumn(
                name: "MadeBy",
                table: "invitations");

            migrationBuilder.DropColumn(
                name: "MadeTicks",
                table: "invitations");

            migrationBuilder.AddPrimaryKey(
                name: "PK_invitations",
                table: "invitations",
                columns: new[] { "Club", "SecretHash" });
        }
    }
}
