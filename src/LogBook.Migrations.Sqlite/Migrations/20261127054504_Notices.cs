using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace LogBook.Migrations.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class Notices : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AlterColumn<int>(
                name: "VisitRowId",
                table: "Outbox",
                type: "INTEGER",
                nullable: true,
                oldClrType: typeof(int),
                oldType: "INTEGER");

            migrationBuilder.AlterColumn<int>(
                name: "CustomerId",
                table: "Outbox",
                type: "INTEGER",
                nullable: true,
                oldClrType: typeof(int),
                oldType: "INTEGER");

            migrationBuilder.AddColumn<string>(
                name: "About",
                table: "Outbox",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "NoticeAtOnce",
                table: "AspNetUsers",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<bool>(
                name: "NoticeDigest",
                table: "AspNetUsers",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<bool>(
                name: "NoticeOwnSites",
                table: "AspNetUsers",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.CreateIndex(
                name: "IX_Outbox_Kind_Recipient_About",
                table: "Outbox",
                columns: new[] { "Kind", "Recipient", "About" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "IX_Outbox_Kind_Recipient_About",
                table: "Outbox");

            migrationBuilder.DropColumn(
                name: "About",
                table: "Outbox");

            migrationBuilder.DropColumn(
                name: "NoticeAtOnce",
                table: "AspNetUsers");

            migrationBuilder.DropColumn(
                name: "NoticeDigest",
                table: "AspNetUsers");

            migrationBuilder.DropColumn(
                name: "NoticeOwnSites",
                table: "AspNetUsers");

            migrationBuilder.AlterColumn<int>(
                name: "VisitRowId",
                table: "Outbox",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0,
                oldClrType: typeof(int),
                oldType: "INTEGER",
                oldNullable: true);

            migrationBuilder.AlterColumn<int>(
                name: "CustomerId",
                table: "Outbox",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0,
                oldClrType: typeof(int),
                oldType: "INTEGER",
                oldNullable: true);
        }
    }
}
