/** The part of the web framework's reply that controllers use. */
export interface HttpReply {
  readonly sent: boolean;
  header(name: string, value: string): HttpReply;
  status(code: number): HttpReply;
  send(body: string): HttpReply;
}
