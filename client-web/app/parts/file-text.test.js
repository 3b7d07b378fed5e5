import assert from 'node:assert/strict';
import { test } from 'node:test';
import { tolerant, utf8 } from './file-text.js';

const bytes = (...some) => new Uint8Array(some).buffer;

test('UTF-8 is read with or without its mark', () => {
  assert.equal(utf8(bytes(0x5A, 0x6F, 0xC3, 0xAB)), 'Zo\u00eb');
  assert.equal(utf8(bytes(0xEF, 0xBB, 0xBF, 0x5A)), 'Z');
});

test('Windows-1252 is no text to write back', () => assert.equal(utf8(bytes(0x5A, 0x6F, 0xEB, 0x2C)), null));

test('notes are read as the server reads them', () => {
  assert.equal(tolerant(bytes(0xFF, 0xFE, 0x5A, 0x00)), 'Z');
  assert.equal(tolerant(bytes(0xFE, 0xFF, 0x00, 0x5A)), 'Z');
  assert.equal(tolerant(bytes(0x5A, 0xEB, 0x2C)), 'Z\ufffd,');
});
